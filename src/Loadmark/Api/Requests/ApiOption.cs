namespace Loadmark.Api.Requests;

/// <summary>An option that an address takes, named as the command's is.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Kind">What it takes.</param>
/// <param name="About">What it does, for people.</param>
/// <param name="Example">A value of it.</param>
internal sealed record ApiOption(string Name, OptionKind Kind, string About, string Example)
{
    /// <summary>The words that a text may be; empty where it may be any.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>The name that the answer carries for the rig's file.</summary>
    public static ApiOption File { get; } = new(
        "file",
        OptionKind.Text,
        "The name of the rig's file, for the answer to carry. Nothing is opened. Left out, it is empty.",
        "pit.rig.yaml");

    /// <summary>The supplies that may be used.</summary>
    public static ApiOption Only { get; } = new(
        "only", OptionKind.Texts, "Use these supplies of the rig alone: ids parted by commas, or the option several times.", "brick");

    /// <summary>Samples.</summary>
    public static ApiOption Spread { get; } = new(
        "spread", OptionKind.Number, "How likely each figure is where it is not known exactly: the number of samples.", "200");

    /// <summary>The seed of samples.</summary>
    public static ApiOption Seed { get; } = new("seed", OptionKind.Number, "The seed that the samples follow from; 1 when left out.", "7");
}
