namespace Loadmark.Files.Texts;

/// <summary>Takes apart texts of several figures: "2 A 18 W", "230V/50Hz", "520 mA for 1.5 s".</summary>
internal static class FigureSplitter
{
    /// <summary>
    /// The figures, each with its unit. A new one begins at a digit that follows a letter and something between,
    /// or a letter straight away ("230V50Hz"). Nothing is lost: what stands between two figures and is none of the joints
    /// stays with the one before it, which then cannot be read.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="joints">What may stand once between two figures besides spaces: signs, and words with a space before them.</param>
    public static List<string> Split(string text, params ReadOnlySpan<string> joints)
    {
        var figures = new List<string>(2);
        var start = 0;
        var unitSeen = false;
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsLetter(text[i]))
            {
                unitSeen = true;
            }
            else if (unitSeen && (char.IsAsciiDigit(text[i]) || (text[i] == '.' && i + 1 < text.Length && char.IsAsciiDigit(text[i + 1]))))
            {
                figures.Add(WithoutJoint(text[start..i].Trim(), joints));
                start = i;
                unitSeen = false;
            }
        }

        figures.Add(text[start..].Trim());
        return figures;
    }

    private static string WithoutJoint(string figure, ReadOnlySpan<string> joints)
    {
        foreach (var joint in joints)
        {
            var rest = figure.Length - joint.Length;
            if (figure.EndsWith(joint, StringComparison.OrdinalIgnoreCase) && rest > 0
                && (!char.IsLetter(joint[0]) || char.IsWhiteSpace(figure[rest - 1])))
                return figure[..rest].TrimEnd();
        }

        return figure;
    }
}
