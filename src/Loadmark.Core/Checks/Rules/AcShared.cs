using Loadmark.Core.Fits;

namespace Loadmark.Core.Checks.Rules;

/// <summary>Loads for alternating current whose grounds meet are fed from one winding.</summary>
internal sealed class AcShared : NameplateRule
{
    /// <inheritdoc/>
    public override RuleId Id => RuleId.AcShared;

    /// <inheritdoc/>
    public override Severity Severity => Severity.Harm;

    /// <inheritdoc/>
    public override string Source => "Kirchhoff's voltage law: rectifiers put the grounds of two loads at different ends of the winding, and the audio screens join them";

    protected override void Judge(NameplateCase subject, Report report)
    {
        var audio = new SignalPath(subject.Rig.Rig);
        foreach (var group in subject.Rig.Returns)
        {
            var occupancy = audio.OccupancyOf(group);
            if (occupancy.Windings == Fit.Yes)
                continue;

            var loads = Words.Ids(group.Loads.Where(load => audio.OccupantOf(load).IsOnWinding));
            var isAssumed = loads.Count > 0 && group.Loads.Any(static load => load.Feeds.Any(static feed => feed.Outlets.Any(static outlet => outlet.Rating.Isolated.IsAssumed && outlet.Rating.Supply.Outlets.Count > 1)));
            report.Add(
                this,
                Words.Subjects(group, loads),
                $"{Words.List(loads)} take alternating current from one winding, that of {Words.List(group.Names)}{(isAssumed ? " (nothing says that its outlets are isolated)" : "")}, and their audio leads join their grounds. "
                + "What is inside decides; where their rectifiers differ, the winding is shorted through the screens.",
                $"{loads.Count} a.c. loads with joined grounds > 1 on one winding",
                $"Give each an a.c. adaptor, or an isolated a.c. outlet, of its own.");
        }
    }
}
