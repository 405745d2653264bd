namespace Loadmark.Files.Forms;

/// <summary>One thing that can be typed about a load, an outlet, a supply, a lead or a rig; a key of the rig file.</summary>
/// <param name="Key">The key as the rig file has it, such as <c>starts_below</c>.</param>
/// <param name="Title">What it is called, for people.</param>
/// <param name="Description">What it means, with its default, in a sentence or two.</param>
/// <param name="Words">The words it takes; empty where it takes other texts.</param>
/// <param name="Examples">Values that show how it is written; may be empty.</param>
/// <param name="IsYesNo">Whether it is yes or no.</param>
public sealed record FormField(
    string Key, string Title, string Description, IReadOnlyList<string> Words, IReadOnlyList<string> Examples, bool IsYesNo);
