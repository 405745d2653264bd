using Loadmark.Core.Checks;
using Loadmark.Drawing.Scenes;

namespace Loadmark.Drawing.Texts;

/// <summary>The signs of the severities, drawn so that no font need have them; each differs in shape, not in colour alone.</summary>
public static class SignShapes
{
    /// <summary>The severity in a word.</summary>
    public static string WordOf(Severity severity) => severity.ToString().ToLowerInvariant();

    /// <summary>The ink of a severity.</summary>
    public static Ink InkOf(Severity severity) => severity switch
    {
        Severity.Harm => Ink.SignHarm,
        Severity.Fails => Ink.SignFails,
        Severity.Open => Ink.SignOpen,
        Severity.Unsure => Ink.SignUnsure,
        Severity.Noise => Ink.SignNoise,
        Severity.Margin => Ink.SignMargin,
        Severity.Note => Ink.SignNote,
        _ => Ink.SignGood,
    };

    /// <summary>Adds the sign, about 9 px in size.</summary>
    /// <param name="shapes">Where it goes.</param>
    /// <param name="severity">Which.</param>
    /// <param name="at">Its middle.</param>
    public static void Add(List<Shape> shapes, Severity severity, Point at)
    {
        var ink = InkOf(severity);
        Point At(double x, double y) => new(at.X + x, at.Y + y);
        switch (severity)
        {
            case Severity.Harm:
                shapes.Add(new LineShape(ink, At(-4, -4), At(4, 4)));
                shapes.Add(new LineShape(ink, At(-4, 4), At(4, -4)));
                break;
            case Severity.Fails:
                shapes.Add(new PathShape(ink, [At(-3.5, -3.5), At(3.5, -3.5), At(3.5, 3.5), At(-3.5, 3.5)], Closed: true));
                break;
            case Severity.Open:
                shapes.Add(new PathShape(ink, [At(-3.5, -3.5), At(3.5, -3.5), At(3.5, 3.5), At(-3.5, 3.5)], Closed: true));
                break;
            case Severity.Unsure:
                shapes.Add(
                    new PathShape(
                        ink, [At(-2.6, -2.2), At(-1.4, -4.2), At(1.4, -4.2), At(2.6, -2.2), At(1.6, -0.6), At(0, 0.4), At(0, 1.8)]));
                shapes.Add(new LineShape(ink, At(0, 3.8), At(0, 4.4)));
                break;
            case Severity.Noise:
                foreach (var y in (ReadOnlySpan<double>)[-2.2, 2.2])
                    shapes.Add(
                        new PathShape(ink, [At(-4.5, y + 1.2), At(-2.4, y - 1.2), At(0, y + 0.2), At(2.4, y + 1.2), At(4.5, y - 1.2)]));
                break;
            case Severity.Margin:
                shapes.Add(new PathShape(ink, [At(-4.5, 3.6), At(0, -4.4), At(4.5, 3.6), At(-4.5, 3.6), At(0, -4.4)]));
                break;
            case Severity.Note:
                shapes.Add(new CircleShape(ink, at, 2.2));
                break;
            default:
                shapes.Add(new PathShape(ink, [At(-4, 0), At(-1.2, 3.2), At(4.2, -3.6)]));
                break;
        }
    }
}
