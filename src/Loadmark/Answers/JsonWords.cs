using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Nameplates;
using Loadmark.Core.Readings;
using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Loadmark.Planning.Buying;
using Loadmark.Simulation.Figures;
using Loadmark.Simulation.Starting;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>The words that stand for the values of enumerations in JSON. People script against them.</summary>
internal static class JsonWords
{
    /// <summary>The words for severities and verdicts, the worst first.</summary>
    public static IReadOnlyList<string> Severities() => [.. Enum.GetValues<Severity>().OrderDescending().Select(Of)];

    /// <summary>The words for topics of a label.</summary>
    public static IReadOnlyList<string> Topics() => [.. Enum.GetValues<LabelTopics>().SelectMany(Of).Distinct()];

    /// <summary>The word for a severity or a verdict.</summary>
    public static string Of(Severity severity) => severity switch
    {
        Severity.Good => "good",
        Severity.Note => "note",
        Severity.Margin => "margin",
        Severity.Noise => "noise",
        Severity.Unsure => "unsure",
        Severity.Open => "open",
        Severity.Fails => "fails",
        Severity.Harm => "harm",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "There is no word for it."),
    };

    /// <summary>The words for kinds of gear.</summary>
    public static IReadOnlyList<string> GearKinds() => [.. Enum.GetValues<GearKind>().Select(Of)];

    /// <summary>The words for how several outlets are joined.</summary>
    public static IReadOnlyList<string> Joints() => [.. Enum.GetValues<Joint>().Select(Of).OfType<string>()];

    /// <summary>The word for how a plan came out.</summary>
    public static string Of(PlanStatus status) => status.ToString().ToLowerInvariant();

    /// <summary>The word for how a search for what to buy came out.</summary>
    public static string Of(BuyStatus status) => status.ToString().ToLowerInvariant();

    /// <summary>The word for how several outlets are joined; null for one outlet.</summary>
    public static string? Of(Joint joint) => joint == Joint.None ? null : joint.ToString().ToLowerInvariant();

    /// <summary>The word for a kind of gear.</summary>
    public static string Of(GearKind kind) => kind switch
    {
        GearKind.Load => "load",
        GearKind.Supply => "supply",
        GearKind.Lead => "lead",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no word for it."),
    };

    /// <summary>The word for what was measured.</summary>
    public static string Of(DrawKind kind) => kind == DrawKind.Running ? "running" : "starting";

    /// <summary>The word for what a piece of a file is to the library.</summary>
    public static string Of(ImportState state) => state switch
    {
        ImportState.New => "new",
        ImportState.Same => "same",
        ImportState.Differs => "differs",
        _ => "refused",
    };

    /// <summary>The word for direct or alternating.</summary>
    public static string Of(SupplyForm form) => form switch
    {
        SupplyForm.Direct => "dc",
        SupplyForm.Alternating => "ac",
        _ => throw new ArgumentOutOfRangeException(nameof(form), form, "There is no word for it."),
    };

    /// <summary>The word for a polarity.</summary>
    public static string Of(Polarity polarity) => polarity switch
    {
        Polarity.CentreNegative => "centre-negative",
        Polarity.CentrePositive => "centre-positive",
        _ => throw new ArgumentOutOfRangeException(nameof(polarity), polarity, "There is no word for it."),
    };

    /// <summary>The word for the side that is joined to ground.</summary>
    public static string Of(GroundSide side) => side == GroundSide.Positive ? "positive" : "negative";

    /// <summary>A word for each topic.</summary>
    public static IEnumerable<string> Of(LabelTopics topics)
    {
        if (topics.HasFlag(LabelTopics.Form))
            yield return "supply";
        if (topics.HasFlag(LabelTopics.Polarity))
            yield return "polarity";
        if (topics.HasFlag(LabelTopics.Ground))
            yield return "ground";
        if (topics.HasFlag(LabelTopics.Plug))
            yield return "plug";
        if (topics.HasFlag(LabelTopics.Regulation))
            yield return "regulation";
    }

    /// <summary>The word for how the reading of a field went.</summary>
    public static string Of(FieldState state) => state switch
    {
        FieldState.Absent => "absent",
        FieldState.Read => "read",
        FieldState.Ambiguous => "ambiguous",
        FieldState.Unreadable => "unreadable",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "There is no word for it."),
    };

    /// <summary>The word for how a load fares.</summary>
    public static string Of(LoadState state) => state switch
    {
        LoadState.Runs => "runs",
        LoadState.Low => "low",
        LoadState.Off => "off",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "There is no word for it."),
    };

    /// <summary>The word for what an outlet is doing.</summary>
    public static string Of(OutletState state) => state switch
    {
        OutletState.Regulating => "regulating",
        OutletState.Limiting => "limiting",
        OutletState.Off => "off",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "There is no word for it."),
    };

    /// <summary>The word for what happens at start-up.</summary>
    public static string Of(StartUpEventKind kind) => kind switch
    {
        StartUpEventKind.AtLimit => "at-limit",
        StartUpEventKind.WithinLimit => "within-limit",
        StartUpEventKind.SwitchesOff => "switches-off",
        StartUpEventKind.TriesAgain => "tries-again",
        StartUpEventKind.FuseTrips => "fuse-trips",
        StartUpEventKind.FuseCloses => "fuse-closes",
        StartUpEventKind.Starts => "starts",
        StartUpEventKind.HasStarted => "has-started",
        StartUpEventKind.DropsOut => "drops-out",
        StartUpEventKind.Repeats => "repeats",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "There is no word for it."),
    };
}
