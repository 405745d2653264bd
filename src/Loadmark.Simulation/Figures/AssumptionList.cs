using System.Collections.Immutable;

namespace Loadmark.Simulation.Figures;

/// <summary>Gathers what is assumed while a circuit is built, each figure once with all that it was used for.</summary>
internal sealed class AssumptionList
{
    private readonly List<Entry> _entries = [];

    /// <summary>Takes a common figure for something, and says so.</summary>
    public T Take<T>(CircuitDefault<T> figure, string subject)
    {
        Add(figure.Name, figure.Text, subject, figure.Source, figure.IsForStartUp);
        return figure.Value;
    }

    /// <summary>Says what was taken for something.</summary>
    public void Add(string figure, string value, string subject, string source, bool isForStartUp = false)
    {
        var entry = _entries.Find(entry => entry.Figure == figure && entry.Value == value);
        if (entry is null)
            _entries.Add(entry = new Entry(figure, value, source, isForStartUp, []));
        if (!entry.Subjects.Contains(subject))
            entry.Subjects.Add(subject);
    }

    /// <summary>A resistance as the circuit has it, Ω: what is less than the least is computed as that, and said.</summary>
    public double AtLeast(double ohms, string subject, double least)
    {
        if (ohms >= least)
            return ohms;
        var words = new Ohms((decimal)least).ToString();
        Add($"resistance under {words}", $"computed as {words}", subject, "less than any contact has; common practice, no source");
        return least;
    }

    /// <summary>What was said, in the order in which it was said first.</summary>
    public ImmutableArray<Assumption> ToArray() =>
        [.. _entries.Select(
            static entry => new Assumption(entry.Figure, entry.Value, [.. entry.Subjects], entry.Source, entry.IsForStartUp))];

    private sealed record Entry(string Figure, string Value, string Source, bool IsForStartUp, List<string> Subjects);
}
