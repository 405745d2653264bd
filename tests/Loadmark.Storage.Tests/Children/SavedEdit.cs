namespace Loadmark.Storage.Tests.Children;

/// <summary>What the child says of each edit that it has saved.</summary>
/// <param name="Which">The rig's place among those that the child was asked to save, from 0.</param>
/// <param name="Edit">The edit's number.</param>
internal readonly record struct SavedEdit(int Which, int Edit)
{
    /// <summary>Reads a whole line of the child's.</summary>
    /// <exception cref="FormatException">The line is not the place and the number.</exception>
    public static SavedEdit Parse(string line) => new(int.Parse(line[..line.IndexOf(' ')]), int.Parse(line[(line.IndexOf(' ') + 1)..]));
}
