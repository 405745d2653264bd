using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Simulation.Figures;

namespace Loadmark.Simulation.Wiring;

/// <summary>The figures of a feed's lead, with defaults where it gives none. R = ρ·L/A.</summary>
internal sealed class LeadModel
{
    private readonly AssumptionList _assumptions;
    private readonly double _ohmsPerMetre;
    private readonly double? _ohms;

    public LeadModel(WiredFeed feed, AssumptionList assumptions)
    {
        _assumptions = assumptions;
        var lead = feed.Lead;
        Name = lead?.Id ?? $"lead of {feed.OutletNames}";
        IsChain = lead?.Type == LeadType.DaisyChain;
        ContactOhms = lead?.ContactOhms is { } contact
            ? (double)contact.Value
            : Common((double)Lead.CommonContact.Value, Lead.CommonContact.ToString(), "resistance of each contact", assumptions);
        _ohms = lead?.Ohms is { } ohms ? (double)ohms.Value : null;
        if (_ohms is null)
        {
            if (lead?.Wire is null)
                assumptions.Add("wire", Lead.CommonWire.ToString(), Name, Practice);
            SquareMetres = (double)(lead?.Wire ?? Lead.CommonWire).Area.Value;
            _ohmsPerMetre = CircuitDefaults.CopperOhmMetres / SquareMetres.Value;
        }

        if (IsChain)
        {
            // Where the resistance is typed, the lengths only say how it is spread, so plain defaults do.
            Tail = lead?.Tail is { } tail ? (double)tail.Value : Default(CircuitDefaults.TailMetres, assumptions);
            Pitch = lead?.Pitch is { } pitch ? (double)pitch.Value : Default(CircuitDefaults.PitchMetres, assumptions);
            Metres = Tail + (Pitch * (Math.Max(lead?.Plugs ?? 1, feed.Loads.Length) - 1));
        }
        else
        {
            Metres = lead?.Length is { } length
                ? (double)length.Value
                : _ohms is not null ? (double)Lead.CommonLength.Value
                : Common((double)Lead.CommonLength.Value, Lead.CommonLength.ToString(), "length of the lead", assumptions);
        }
    }

    private const string Practice = "common practice, no source";

    /// <summary>The lead in words.</summary>
    public string Name { get; }

    public bool IsChain { get; }

    /// <summary>From end to end, m; of a chain to its last plug.</summary>
    public double Metres { get; }

    /// <summary>From the supply to the first plug of a chain, m.</summary>
    public double Tail { get; }

    /// <summary>Between the plugs of a chain, m.</summary>
    public double Pitch { get; }

    /// <summary>Cross-section, m²; null where the lead gives ohms.</summary>
    public double? SquareMetres { get; }

    /// <summary>Each contact, Ω.</summary>
    public double ContactOhms { get; }

    /// <summary>The resistance of some length of a conductor, Ω: by its wire, or its share of what is typed.</summary>
    public double WireOhms(double metres) => _ohms is { } whole ? Metres > 0 ? whole * metres / Metres : whole : _ohmsPerMetre * metres;

    /// <summary>The resistance of a stretch as the circuit has it, Ω.</summary>
    public double AtLeast(double ohms) => _assumptions.AtLeast(ohms, Name, CircuitDefaults.LeastOhms);

    private double Default(CircuitDefault<double> figure, AssumptionList assumptions) => assumptions.Take(figure, Name);

    private double Common(double value, string text, string what, AssumptionList assumptions)
    {
        assumptions.Add(what, text, Name, Practice);
        return value;
    }
}
