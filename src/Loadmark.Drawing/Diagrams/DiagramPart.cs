namespace Loadmark.Drawing.Diagrams;

/// <summary>What of a rig is in one picture: outlets and unfed loads that follow each other.</summary>
/// <param name="FirstOutlet">The first outlet, by its place among the rig's outlets.</param>
/// <param name="EndOutlet">The place behind the last outlet.</param>
/// <param name="FirstUnfed">The first load on no feed, by its place among them.</param>
/// <param name="EndUnfed">The place behind the last of them.</param>
internal readonly record struct DiagramPart(int FirstOutlet, int EndOutlet, int FirstUnfed, int EndUnfed)
{
    /// <summary>Whether an outlet is in the picture.</summary>
    public bool HasOutlet(int outlet) => outlet >= FirstOutlet && outlet < EndOutlet;
}
