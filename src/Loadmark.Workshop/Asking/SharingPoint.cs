using Loadmark.Core.Fits;
using Loadmark.Core.Gear;
using Loadmark.Core.Ratings;
using Loadmark.Core.Texts;

namespace Loadmark.Workshop.Asking;

/// <summary>Judges what loads on one return do to one another.</summary>
/// <param name="wired">The rig with its wiring.</param>
internal sealed class SharingPoint(WiredRig wired)
{
    private const PlugInAspect Aspect = PlugInAspect.Sharing;

    /// <summary>One point for each return with several loads; else one that says that there is none.</summary>
    public IEnumerable<JudgedPoint> Judge()
    {
        var shared = wired.Returns.Items.Where(static group => group.Loads.Count > 1).ToList();
        if (shared.Count > 0)
            return shared.Select(Of);
        var loads = wired.Loads.Items.Count(static load => load.Feeds.Count > 0);
        var alone = loads == 1 ? "It has the outlet to itself." : "Each has an isolated outlet to itself.";
        return loads == 0 ? [] : [new JudgedPoint(Aspect, PointState.Good, alone)];
    }

    private JudgedPoint Of(ReturnGroup group)
    {
        var occupancy = new SignalPath(wired.Rig).OccupancyOf(group);
        var all = ThingNames.List(group.Loads.Select(static load => load.Id));
        if (occupancy.Harmless == Fit.No)
            return new JudgedPoint(Aspect, PointState.Bad, occupancy.Grounds == Fit.No
                ? $"{SentenceCase.Capital(all)} share one return, and one of them has its ground on the positive side: "
                    + "the audio lead between them shorts the supply."
                : $"{SentenceCase.Capital(all)} share one winding of alternating current: the audio lead between them shorts it.");
        if (occupancy.Harmless == Fit.NotKnown)
        {
            var unknown = ThingNames.List(group.Loads.Where(static load => !load.Rating.Ground.IsKnown).Select(static load => load.Id));
            return new JudgedPoint(
                Aspect,
                PointState.Unsure,
                $"{SentenceCase.Capital(all)} share one return, and nothing tells which side of {unknown} is the ground.")
            {
                Ask = $"Has {unknown} positive ground, as some old fuzzes have? Shared with others it shorts the supply.",
            };
        }

        if (occupancy.SharesDigital || occupancy.SharesIsolating)
        {
            var noisy = ThingNames.List(group.Loads.Where(static load => load.Rating.IsDigital == true).Select(static load => load.Id));
            var why = noisy.Length > 0 ? $", and {noisy} is digital" : "";
            return new JudgedPoint(Aspect, PointState.Unsure, $"{SentenceCase.Capital(all)} share one return{why}: it may hum or whine.")
            {
                If = "a little hum or whine is bearable; an isolated outlet for each ends it",
            };
        }

        List<string> open = [.. group.Loads.Where(static load => load.Rating.IsDigital is null).Select(static load => load.Id)];
        var granted = group.Loads.Any(static load => load.Rating.Ground.Origin == Origin.Assumed);
        return open.Count > 0
            ? new JudgedPoint(
                Aspect,
                PointState.Unsure,
                $"{SentenceCase.Capital(all)} share one return. "
                + $"That does no harm{(granted ? " where none of them is an old fuzz with positive ground" : "")}; "
                + "a digital one may whine into the others.")
            {
                If = $"none of them is digital{(granted ? ", nor an old fuzz with positive ground" : "")}: "
                    + $"a digital one may whine into the others{(granted ? ", positive ground shorts the supply" : "")}",
            }
            : new JudgedPoint(Aspect, PointState.Good, $"{SentenceCase.Capital(all)} share one return, and none of them is digital.");
    }
}
