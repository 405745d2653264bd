using Loadmark.Core.Checks;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Diagrams;

/// <summary>Frames a box at which harm arises, so that it is seen before anything is read.</summary>
internal static class HarmFrame
{
    /// <summary>Adds the frame where it is called for.</summary>
    /// <param name="shapes">The shapes of the box.</param>
    /// <param name="worst">The worst that arises there; null for nothing.</param>
    /// <param name="box">The box.</param>
    public static void Add(List<Shape> shapes, Severity? worst, Box box)
    {
        if (worst == Severity.Harm)
            shapes.Add(new RectShape(Ink.HarmFrame, box, 3));
    }
}
