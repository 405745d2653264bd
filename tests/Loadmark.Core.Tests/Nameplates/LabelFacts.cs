using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;

namespace Loadmark.Core.Tests.Nameplates;

/// <summary>What a reading asserts and what it leaves open, one fact each, in the words of technician-labels.txt.</summary>
internal static class LabelFacts
{
    public static List<string> Of(Nameplate nameplate)
    {
        List<string> facts = [];
        Add(facts, nameplate.Form, Form, "dc|ac");
        facts.AddRange(nameplate.Modes.Select(Mode).Where(text => text.Length > 0));
        foreach (var group in nameplate.Outlets)
            facts.Add(Outlets(group, nameplate));
        if (nameplate.EachOutlet)
            facts.Add("each");
        if (nameplate.Total is { } total)
            facts.Add($"total({total})");
        if (nameplate.Mains is { } mains)
            facts.Add($"mains({Join(mains.Volts, mains.Hertz, mains.Amps, mains.Watts, mains.VoltAmps)})");
        if (nameplate.Input is { } input)
            facts.Add($"input({Join(input.Volts, input.Amps, input.Watts, input.VoltAmps, input.Form.Value is { } form && form != nameplate.Form.Value ? Form(form) : null)})");
        Add(facts, nameplate.Polarity, Polar, "both");
        Add(facts, nameplate.Plug, plug => $"plug {plug.Name}", "plug?");
        Add(facts, nameplate.Regulated, regulated => regulated ? "regulated" : "unregulated", "regulated?");
        Add(facts, nameplate.Ground, side => side == GroundSide.Positive ? "ground positive" : "ground negative", "ground?");
        Add(facts, nameplate.Isolated, isolated => isolated ? "isolated" : "not isolated", "isolated?");
        AddOpen(facts, "volts", nameplate.AmbiguousVolts);
        AddOpen(facts, "amps", nameplate.AmbiguousAmps);
        AddOpen(facts, "watts", nameplate.AmbiguousWatts);
        foreach (var topic in Enum.GetValues<LabelTopics>().Where(topic => topic != LabelTopics.None && nameplate.NotUnderstood.HasFlag(topic)))
            facts.Add($"ask {topic.ToString().ToLowerInvariant()}");
        return facts;
    }

    /// <summary>Whether a fact leaves something open instead of asserting it.</summary>
    public static bool IsOpen(string fact) => fact.Contains('?') || fact.StartsWith("ask ", StringComparison.Ordinal) || fact is "dc|ac" or "both";

    private static string Outlets(PrintedOutlets group, Nameplate of)
    {
        // What every group and the label say alike is a fact of the label.
        var form = group.Form.Value is { } printed && printed != of.Form.Value ? Form(printed) : null;
        var polarity = group.Polarity.Value is { } polar && polar != of.Polarity.Value ? Polar(polar) : null;
        var isolated = group.Isolated.Value is { } own && own != of.Isolated.Value ? own ? "isolated" : "not isolated" : null;
        return $"outlets {Join(group.Ids, $"x{group.Count}:", string.Join(" + ", group.Modes.Select(Mode)), form, polarity, isolated)}";
    }

    private static string Mode(Mode mode) => Join(
        mode.VoltsPlace is null ? null : mode.Volts,
        mode.Amps is { Origin: Origin.Stated } amps ? mode.AmpsFrom is { } from ? $"{from} to {amps}" : amps : null,
        mode.Watts is { Origin: Origin.Stated } watts ? watts : null,
        mode.VoltAmps is { Origin: Origin.Stated } voltAmps ? voltAmps : null);

    private static string Form(SupplyForm form) => form == SupplyForm.Direct ? "dc" : "ac";

    private static string Polar(Polarity polarity) => polarity == Polarity.CentreNegative ? "centre-negative" : "centre-positive";

    private static string Join(params IEnumerable<object?> parts) => string.Join(' ', parts.Where(part => part is not null));

    private static void Add<T>(List<string> facts, Field<T> field, Func<T, string> write, string open)
        where T : struct
    {
        if (field.Value is { } value)
            facts.Add(write(value));
        else if (field.State == FieldState.Ambiguous)
            facts.Add(open);
    }

    private static void AddOpen<T>(List<string> facts, string name, Field<T> field)
        where T : struct
    {
        if (field.State == FieldState.Ambiguous)
            facts.Add($"{name}? {string.Join('|', field.Candidates)}");
    }
}
