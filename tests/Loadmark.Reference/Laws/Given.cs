namespace Loadmark.Reference.Laws;

/// <summary>What a worked example gives, such as <c>emf=12.00 V;r=0.100 ohm;R=10.000 ohm</c>, read by the program's own reader.</summary>
public sealed class Given
{
    private readonly Dictionary<string, string> _values;

    /// <summary>Splits the text into names and values; words without "=" are left out, for the reader of the row to know.</summary>
    public Given(string text) => _values = text
        .Split(';', StringSplitOptions.TrimEntries)
        .Select(part => part.Split('=', 2))
        .Where(pair => pair.Length == 2)
        .ToDictionary(pair => pair[0], pair => pair[1]);

    /// <summary>A voltage by its name.</summary>
    public Volts Volts(string name) => Read<Volt>(_values[name]);

    /// <summary>A current by its name.</summary>
    public Amps Amps(string name) => Read<Ampere>(_values[name]);

    /// <summary>A power by its name.</summary>
    public Watts Watts(string name) => Read<Watt>(_values[name]);

    /// <summary>A resistance by its name.</summary>
    public Ohms Ohms(string name) => Read<Ohm>(_values[name]);

    /// <summary>A length by its name.</summary>
    public Metres Metres(string name) => Read<Metre>(_values[name]);

    /// <summary>Several resistances under one name: <c>20,20,10 ohm</c> or <c>3k,10k,5k</c>, the unit printed last or as a bare k.</summary>
    public IReadOnlyList<Ohms> OhmsList(string name)
    {
        var text = _values[name];
        var items = text.Replace("ohm", "", StringComparison.Ordinal).Split(',', StringSplitOptions.TrimEntries);
        return [.. items.Select(item => Read<Ohm>($"{item}{(item.EndsWith('k') ? "Ω" : " Ω")}"))];
    }

    private static Quantity<TUnit> Read<TUnit>(string text)
        where TUnit : struct, IUnit =>
        QuantityReader.TryRead<TUnit>(text, out var quantity, out var problem)
            ? quantity
            : throw new FormatException($"'{text}': {problem}");
}
