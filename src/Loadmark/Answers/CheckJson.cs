using Loadmark.Core.Checks;
using Loadmark.Files.Errors;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>The answer to a check as JSON: one object for a rig, an array in the order asked for several.</summary>
internal static class CheckJson
{
    /// <summary>The shape of a finding.</summary>
    public static JsonShape<Finding> Finding { get; } = new JsonShape<Finding>("Finding", "One thing that a rule has to say.")
        .Text("rule", static finding => finding.Rule, "The rule, as in docs/rules: over-voltage.")
        .Word("severity", static finding => JsonWords.Of(finding.Severity), JsonWords.Severities, "How bad it is.")
        .Texts("subjects", static finding => finding.Subjects, "What it is about: ids of loads, outlets, supplies, leads.")
        .Text("message", static finding => finding.Message, "What it is, in a sentence.")
        .Text("working", static finding => finding.Working, "The arithmetic; null where there is none.", Presence.OrNull)
        .Text("remedy", static finding => finding.Remedy, "What to do; null where there is nothing.", Presence.OrNull)
        .Text(
            "source", static finding => finding.Source, "What the rule rests on; null where it is the definition of the thing.",
            Presence.OrNull);

    /// <summary>What keeps a file from being read.</summary>
    public static JsonShape<FileError> Fault { get; } = new JsonShape<FileError>("FileError", "What keeps a text from being read.")
        .Count(
            "line", static fault => fault.IsOfWhole ? null : fault.Line, "The line, from 1; null where it is wrong with the whole.",
            Presence.OrNull)
        .Count(
            "column", static fault => fault.IsOfWhole ? null : fault.Column,
            "The column, from 1, in UTF-16 code units; null as the line is.", Presence.OrNull)
        .Text("found", static fault => fault.Found, "What stands there; null where the fault is not one piece of text.", Presence.OrNull)
        .Text("expected", static fault => fault.Expected, "What was expected; null where nothing particular was.", Presence.OrNull)
        .Text("suggestion", static fault => fault.Suggestion, "The nearest right word; null where none is near.", Presence.OrNull)
        .Text("message", static fault => fault.Message, "It in a sentence.");

    private static JsonShape<OutletLoading> Outlet { get; } = new JsonShape<OutletLoading>("OutletLoading", "An outlet, as it is asked.")
        .Text("outlet", static outlet => outlet.Outlet.ToString(), "supply/outlet.")
        .Figure("volts", static outlet => outlet.Volts?.Value, "The voltage it is set to, V; null where it is not known.", Presence.OrNull)
        .Figure("limitAmps", static outlet => outlet.Limit?.Value, "What it can give, A; null where it is not known.", Presence.OrNull)
        .Figure(
            "runAmps", static outlet => outlet.Run?.Value, "What its loads draw when running, A; null where it is not known.",
            Presence.OrNull)
        .Figure(
            "startAmps", static outlet => outlet.Start?.Value, "What its loads draw when starting, A; null where it is not known.",
            Presence.OrNull)
        .Texts("loads", static outlet => outlet.Loads, "Its loads.");

    private static JsonShape<TotalLoading> Total { get; } = new JsonShape<TotalLoading>(
            "TotalLoading", "A limit that several outlets share, as it is asked: in watts where it is printed so, else in amps.")
        .Text("supply", static total => total.Supply, "The supply.")
        .Text("of", static total => total.Holder, "Whose limit it is: the supply's, or a bank's.")
        .When(static total => total.Limit.Watts is not null, static members => members
            .Figure("limitWatts", static total => total.Limit.Watts?.Value, "The limit, W.", Presence.OrNull)
            .Figure("runWatts", static total => total.Run.Watts?.Value, "Running, W.", Presence.OrNull)
            .Figure("startWatts", static total => total.Start.Watts?.Value, "Starting, W.", Presence.OrNull))
        .When(static total => total.Limit.Watts is null, static members => members
            .Figure("limitAmps", static total => total.Limit.Amps?.Value, "The limit, A.", Presence.OrNull)
            .Figure("runAmps", static total => total.Run.Amps?.Value, "Running, A.", Presence.OrNull)
            .Figure("startAmps", static total => total.Start.Amps?.Value, "Starting, A.", Presence.OrNull));

    private static JsonShape<Untold> Untold { get; } = new JsonShape<Untold>("Untold", "What a rule cannot tell.")
        .Text("rule", static untold => untold.Rule, "The rule.")
        .Texts("subjects", static untold => untold.Subjects, "What it is about.")
        .Text("because", static untold => untold.Because, "Why it cannot be told.");

    private static JsonShape<CheckAnswer> Asked { get; } = new JsonShape<CheckAnswer>("", "")
        .Text("file", static answer => answer.File, "The name that was asked with.");

    private static JsonShape<CheckAnswer> Unread { get; } = new JsonShape<CheckAnswer>("", "A file that cannot be read.")
        .Include(Asked, static answer => answer)
        .List("errors", static answer => answer.Errors, Fault, "What keeps it from being read.");

    /// <summary>The answer about a rig that could be read.</summary>
    public static JsonShape<CheckAnswer> Check { get; } = new JsonShape<CheckAnswer>("Check", "What the rules say of a rig as it is wired.")
        .Include(
            new JsonShape<CheckResult>("", "")
                .Text("rig", static check => check.Rig, "The rig's name.")
                .Word(
                    "verdict", static check => JsonWords.Of(check.Verdict), JsonWords.Severities,
                    "The worst severity of the findings; open while nothing is plugged in, unless something is worse; "
                    + "good where something is and there is no finding.")
                .List("findings", static check => check.Findings, Finding, "The findings, the worst first.")
                .List("outlets", static check => check.Outlets, Outlet, "The outlets, as they are asked.")
                .List("totals", static check => check.Totals, Total, "Limits that several outlets share, as they are asked.")
                .Figure("headroom", static check => check.Headroom, "The share of each limit that is to stay free: 0.1 is 10 %.")
                .Flag("headroomIsDefault", static check => check.HeadroomIsDefault, "Whether the rig does not say its headroom.")
                .List("untold", static check => check.Untold, Untold, "What the rules cannot tell, and why."),
            static answer => answer.Result!)
        .Include(Asked, static answer => answer)
        .List(
            "questions", static answer => answer.Questions, QuestionsJson.Question,
            "What is worth asking about the rig, those first whose answer could lead to the worst.")
        .Texts("toBuy", static answer => answer.Result!.ToBuy, "Supplies and leads that count as there, and that nobody has yet.");

    /// <summary>Writes the answers, at least one, and a line end.</summary>
    public static void Write(Stream output, IReadOnlyList<CheckAnswer> answers)
    {
        JsonFormat.WriteLine(output, json =>
        {
            if (answers.Count > 1)
                json.WriteStartArray();
            foreach (var answer in answers)
                (answer.Result is null ? Unread : Check).Write(json, answer);
            if (answers.Count > 1)
                json.WriteEndArray();
        });
    }
}
