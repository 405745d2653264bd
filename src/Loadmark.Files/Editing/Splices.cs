using System.Text;

namespace Loadmark.Files.Editing;

/// <summary>Collects changes to a text, each by the place it has in the old text, and makes them all at once.</summary>
/// <param name="text">The old text.</param>
internal sealed class Splices(string text)
{
    private readonly List<(int Start, int End, string New)> _all = [];

    /// <summary>Puts a text between two characters. What is put in one place stands in the order it was put there.</summary>
    public void Insert(int at, string added) => _all.Add((at, at, added));

    /// <summary>Puts a text in the place of another.</summary>
    public void Replace(int start, int end, string added) => _all.Add((start, end, added));

    /// <summary>Takes characters out.</summary>
    public void Remove(int start, int end) => _all.Add((start, end, ""));

    /// <summary>A piece of the text with the changes in it so far, which are forgotten: the piece is on its way elsewhere.</summary>
    /// <returns>The piece; null when two changes are in each other's way.</returns>
    public string? Take(int start, int end)
    {
        var inside = _all.FindAll(one => one.Start >= start && one.End <= end);
        _all.RemoveAll(one => one.Start >= start && one.End <= end);
        return Apply(inside, start, end);
    }

    /// <summary>The new text; null when two changes are in each other's way.</summary>
    public string? Apply() => Apply(_all, 0, text.Length);

    private string? Apply(List<(int Start, int End, string New)> changes, int start, int end)
    {
        var result = new StringBuilder(end - start);
        var at = start;

        // What is put before a piece that goes away comes first; sorting keeps the order of equals.
        foreach (var change in changes.OrderBy(one => one.Start).ThenBy(one => one.End > one.Start))
        {
            if (change.Start < at)
                return null;
            result.Append(text, at, change.Start - at).Append(change.New);
            at = change.End;
        }

        return result.Append(text, at, end - at).ToString();
    }
}
