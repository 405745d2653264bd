using Loadmark.Core.Gear;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Texts;

/// <summary>
/// The sign of a coaxial connector's polarity as IEC 60417-5926 has it: a dot for the centre, an arc around it for the sleeve, each with a
/// line to its sign in a circle, the centre's at the right.
/// </summary>
public static class PolaritySign
{
    /// <summary>The sign's width as it is drawn at scale 1, px.</summary>
    public const double Width = 46;

    /// <summary>The sign's height as it is drawn at scale 1, px.</summary>
    public const double Height = 14;

    private const double Sleeve = 6;
    private const double Ring = 5;
    private const int ArcSteps = 16;

    /// <summary>The sign.</summary>
    /// <param name="middle">The middle of the connector, which is the middle of the sign.</param>
    /// <param name="polarity">Which contact is positive.</param>
    /// <param name="scale">How large, above 0.</param>
    public static IEnumerable<Shape> Of(Point middle, Polarity polarity, double scale = 1)
    {
        var centreIsPositive = polarity == Polarity.CentrePositive;
        yield return new CircleShape(Ink.LeadPlug, middle, 2.2 * scale);
        yield return new LineShape(Ink.LeadLine, middle, At(13, 0));
        yield return new PathShape(Ink.LeadLine, [.. Enumerable.Range(0, ArcSteps + 1).Select(Arc)]);
        yield return new LineShape(Ink.LeadLine, At(-Sleeve, 0), At(-13, 0));
        foreach (var shape in Contact(18, centreIsPositive))
            yield return shape;
        foreach (var shape in Contact(-18, !centreIsPositive))
            yield return shape;

        Point At(double x, double y) => new(middle.X + (x * scale), middle.Y + (y * scale));

        // Open to the right, where the centre's line goes out.
        Point Arc(int step)
        {
            var angle = Math.PI * (0.25 + (1.5 * step / ArcSteps));
            return At(Sleeve * Math.Cos(angle), Sleeve * Math.Sin(angle));
        }

        IEnumerable<Shape> Contact(double x, bool isPositive)
        {
            yield return new CircleShape(Ink.LeadSpecial, At(x, 0), Ring * scale);
            yield return new LineShape(Ink.LeadLine, At(x - 2.6, 0), At(x + 2.6, 0));
            if (isPositive)
                yield return new LineShape(Ink.LeadLine, At(x, -2.6), At(x, 2.6));
        }
    }
}
