using System.Text;

namespace Loadmark.Web.Hosting;

/// <summary>Names of files that the browser keeps.</summary>
internal static class FileNames
{
    private const int Longest = 60;

    /// <summary>The stem of a file name that every system takes: a rig's name in plain letters.</summary>
    public static string Of(string name)
    {
        var plain = new StringBuilder();
        foreach (var letter in name)
        {
            if (char.IsAsciiLetterOrDigit(letter))
                plain.Append(char.ToLowerInvariant(letter));
            else if (plain.Length > 0 && plain[^1] != '-')
                plain.Append('-');
            if (plain.Length == Longest)
                break;
        }

        var stem = plain.ToString().Trim('-');
        return stem.Length == 0 ? "rig" : stem;
    }
}
