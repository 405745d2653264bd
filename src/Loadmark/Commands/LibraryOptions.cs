using Loadmark.CommandLines;
using Loadmark.Core.Gear;
using Loadmark.Questions;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary>Options that the commands on the gear library and on the rigs that are kept share.</summary>
internal static class LibraryOptions
{
    /// <summary>What is to be taken though the library says otherwise.</summary>
    public static OptionSpec Take { get; } = new(
        "take", OptionKind.Texts, "Take this piece though the library says otherwise; several are parted by commas.")
    { Placeholder = "TAG" };

    /// <summary>Whether all is to be taken though the library says otherwise.</summary>
    public static OptionSpec TakeAll { get; } = new("take-all", OptionKind.Flag, "Take every piece though the library says otherwise.");

    /// <summary>Reads the kind of gear.</summary>
    /// <param name="input">What was typed.</param>
    /// <param name="complaint">What is wrong with it, as a sentence; null where nothing is.</param>
    /// <returns>The kind; null where none was typed, or the one typed is none.</returns>
    public static GearKind? KindOf(CommandInput input, out string? complaint)
    {
        complaint = null;
        if (input.Text(QuestionSpecs.Kind) is not { } typed)
            return null;
        foreach (var kind in Enum.GetValues<GearKind>())
        {
            if (kind.ToString().Equals(typed, StringComparison.OrdinalIgnoreCase))
                return kind;
        }

        complaint = $"--kind: expected load, supply or lead, found '{typed}'.";
        return null;
    }

    /// <summary>What is to be taken though the library says otherwise.</summary>
    /// <param name="input">What was typed.</param>
    public static TakenTags TakenIn(CommandInput input) => new(input.Names(Take), input.Has(TakeAll));
}
