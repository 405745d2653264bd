using Loadmark.Core.Fits;

namespace Loadmark.Core.Checks.Rules;

/// <summary>
/// Loads for alternating current whose grounds meet are fed from one winding, or one of them from a supply that feeds direct current too.
/// </summary>
internal sealed class AcShared : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.AcShared;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source =>
        "Kirchhoff's voltage law: rectifiers put the grounds of two loads at different ends of the winding, "
        + "and the audio screens join them";

    protected override void Judge(NameplateCase subject, Report report)
    {
        foreach (var judged in subject.Returns)
        {
            if (judged.Occupancy.Windings == Fit.No)
                TellSeveral(judged, report);
            else if (judged.Occupancy.Windings == Fit.NotKnown)
                TellBesideDirect(judged, report);
        }
    }

    private void TellSeveral(JudgedReturn judged, Report report)
    {
        var loads = judged.IdsWhere(static load => load.IsOnWinding);
        report.Add(
            this,
            Phrases.Subjects(judged.Group, loads),
            $"{Phrases.List(loads)} take alternating current from one winding, that of {Phrases.List(judged.Group.Names)}{Taken(judged)}, "
            + "and their audio leads join their grounds. What is inside decides; where their rectifiers differ, "
            + "the winding is shorted through the screens.",
            $"{loads.Count} a.c. loads with joined grounds > 1 on one winding",
            "Give each an a.c. adaptor, or an isolated a.c. outlet, of its own.");
    }

    private void TellBesideDirect(JudgedReturn judged, Report report)
    {
        var alternating = judged.IdsWhere(static load => load.IsOnWinding);
        var direct = judged.IdsWhere(static load => load.MeetsWindings);
        var names = Phrases.List(judged.Group.Names);
        report.Add(
            this,
            Severity.Unsure,
            Phrases.Subjects(judged.Group, [.. alternating, .. direct]),
            $"{Phrases.List(alternating)} takes alternating current and {Phrases.List(direct)} "
            + $"{Phrases.Verb(direct.Count, "takes", "take")} direct current from outlets of {names} that share a return{Taken(judged)}, "
            + "and their audio leads join their grounds. If both come from one winding, "
            + "what is inside decides whether it is shorted through the screens.",
            $"1 a.c. load beside {direct.Count} d.c. {Phrases.Verb(direct.Count, "load", "loads")} on one return, grounds joined",
            "With the supply unplugged from the mains and from everything else, measure from each contact of the a.c. outlet to the return "
            + "of a d.c. outlet, with the meter's diode range, both ways round: where it never shows a path, the winding is apart; "
            + $"then type 'isolated: true' for the a.c. outlet. Else give {Phrases.List(alternating)} an a.c. adaptor of its own.",
            [.. alternating]);
    }

    private static string Taken(JudgedReturn judged)
    {
        var isAssumed = judged.Group.Loads.Any(static load => load.Feeds.Any(static feed => feed.Outlets.Any(
            static outlet => outlet.Rating.Isolated.IsAssumed && outlet.Rating.Supply.Outlets.Count > 1)));
        return isAssumed ? " (nothing says that its outlets are isolated)" : "";
    }
}
