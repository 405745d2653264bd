using Loadmark.Answers;
using Loadmark.Api.Requests;
using Loadmark.Core.Gear;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Library;

namespace Loadmark.Api.Library;

/// <summary>The addresses of pieces of gear: the kind and the tag.</summary>
internal static class GearAddress
{
    /// <summary>The words for the kinds of gear.</summary>
    public static IReadOnlyList<string> Kinds { get; } = JsonWords.GearKinds();

    /// <summary>The parts of such an address.</summary>
    public static IReadOnlyList<PathParameter> Parts { get; } =
    [
        new("kind", "What sort of thing it is: load, supply or lead.") { Words = Kinds, Example = "load" },
        new("tag", "Its tag, capitals aside.") { Example = "delay-2" },
    ];

    /// <summary>The address of a piece.</summary>
    public static string Of(GearKind kind, string tag) => $"/api/gear/{JsonWords.Of(kind)}/{Uri.EscapeDataString(tag)}";

    /// <summary>The kind that a word stands for; null for none.</summary>
    public static GearKind? KindOf(string? word) =>
        Kinds.Contains(word ?? "", StringComparer.Ordinal) ? Enum.GetValues<GearKind>().Single(kind => JsonWords.Of(kind) == word) : null;

    /// <summary>Finds a piece.</summary>
    /// <param name="library">The library.</param>
    /// <param name="kind">The word for its kind.</param>
    /// <param name="tag">Its tag, capitals aside, as it stands in the address.</param>
    /// <param name="refusal">Why there is none; null where there is.</param>
    public static LibraryGear? Find(GearSnapshot library, string kind, string tag, out Problem? refusal)
    {
        refusal = null;
        if (KindOf(kind) is not { } known)
        {
            refusal = new Problem(ProblemKind.NotFound, $"There is no such kind of gear. There are: {string.Join(", ", Kinds)}.");
            return null;
        }

        // The server leaves an escaped slash as it is, since it would part the address.
        if ((library.Find(known, tag) ?? library.Find(known, tag.Replace("%2F", "/", StringComparison.OrdinalIgnoreCase))) is { } gear)
            return gear;
        var near = library.Near(known, tag);
        refusal = new Problem(
            ProblemKind.NotFound,
            $"The library has no {kind} with that tag.{(near.Count == 0 ? "" : $" Did you mean {string.Join(" or ", near)}?")}");
        return null;
    }
}
