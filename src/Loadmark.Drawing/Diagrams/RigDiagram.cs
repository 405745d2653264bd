using Loadmark.Core.Checks;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Drawing.Scenes;
using Loadmark.Drawing.Texts;

namespace Loadmark.Drawing.Diagrams;

/// <summary>
/// The single-line diagram of a rig: mains, supplies, outlets, leads and loads from left to right, or under one another
/// where the picture is narrow. Takes time in proportion to the rig.
/// </summary>
public static class RigDiagram
{
    /// <summary>Draws a rig.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="check">What the rules say of that same rig.</param>
    /// <param name="options">How to draw it; null for the usual way.</param>
    /// <exception cref="InvalidRigException">The rig refers to a load, outlet or lead that it does not have.</exception>
    /// <exception cref="ArgumentException">The check is of another rig.</exception>
    public static Scene Draw(Rig rig, CheckResult check, DiagramOptions? options = null) => Draw(WiredRig.Of(rig), check, options);

    /// <summary>Draws a rig that has been looked up already.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="check">What the rules say of that same rig.</param>
    /// <param name="options">How to draw it; null for the usual way.</param>
    /// <exception cref="ArgumentException">The check is of another rig.</exception>
    public static Scene Draw(WiredRig rig, CheckResult check, DiagramOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(check);
        return Draw(new DiagramModel(rig, check, options ?? new DiagramOptions()));
    }

    /// <summary>Draws a rig in as many pictures as it needs, each with its heading and key.</summary>
    /// <param name="rig">The rig.</param>
    /// <param name="check">What the rules say of that same rig.</param>
    /// <param name="options">How to draw it.</param>
    /// <param name="mostHeight">
    /// How high a picture may be, px; one is higher only where a single row of it is, which takes a name of many lines.
    /// </param>
    /// <returns>The pictures in order, at least one; together they have each outlet, lead and load once.</returns>
    /// <exception cref="ArgumentException">The check is of another rig.</exception>
    public static IReadOnlyList<Scene> DrawPages(WiredRig rig, CheckResult check, DiagramOptions options, double mostHeight)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(check);
        var view = new DiagramModel(rig, check, options);
        var measures = DiagramMeasures.Of(options.Width, view.Rows.Wandering);
        var head = DiagramHead.Draw(view, measures, options.ShowsHeading ? 30.0 : 0, []);
        var layout = DiagramLayout.Of(view, measures, head);
        var key = options.ShowsKey ? KeyDrawing.Draw(view, measures, 0).Bottom : 0;
        return
        [
            .. DiagramPaging.Of(view, layout, mostHeight, head, key + 6)
                .Select(part => Draw(new DiagramModel(rig, check, options) { Part = part })),
        ];
    }

    private static Scene Draw(DiagramModel view)
    {
        var (rig, options) = (view.Rig, view.Options);
        var measures = DiagramMeasures.Of(options.Width, view.Rows.Wandering);
        var groups = new List<SceneGroup>();
        var top = options.ShowsHeading ? 30.0 : 0;
        var head = DiagramHead.Draw(view, measures, top, groups);
        var layout = DiagramLayout.Of(view, measures, head);

        var first = 0;
        for (var index = 0; index < rig.Supplies.Count; index++)
        {
            SupplyDrawing.Draw(view, layout, index, first, groups);
            first += rig.Supplies[index].Supply.Outlets.Count;
        }

        LeadDrawing.Draw(view, layout, groups);
        foreach (var load in rig.Loads)
        {
            if (view.Shows(load))
                groups.Add(LoadDrawing.Of(view, layout, load));
        }

        var bottom = DiagramHead.DrawMissing(view, layout, head, groups);
        if (options.ShowsKey && rig.Outlets.Count > 0)
        {
            (var key, bottom) = KeyDrawing.Draw(view, measures, bottom);
            groups.Add(key);
        }

        // The mains' line is as long as the supplies reach, which only now is known; it lies beneath.
        groups.Insert(0, DiagramHead.Mains(view, layout, top));
        return new Scene
        {
            Width = measures.Width,
            Height = Math.Ceiling(bottom + 6),
            Title = SafeText.Clean($"{rig.Rig.Name}: what feeds what"),
            Description = RigDescription.Of(view),
            Groups = [.. groups],
        };
    }
}
