using Loadmark.Answers;
using Loadmark.Api.Requests;
using Loadmark.Questions;
using Loadmark.Web.Problems;

namespace Loadmark.Api.StoredRigs;

/// <summary>What the addresses of kept rigs take and answer.</summary>
internal static class RigsOperations
{
    private const string Group = "Kept rigs";

    private static readonly OptionSpec What = ApiOptions.What with
    {
        Text = "What the edit does, for the page's undo button.",
        Example = "changing the delay's label",
    };

    private static readonly PathParameter Id = new("id", "The rig.") { Format = "uuid" };

    private static readonly IReadOnlyList<ApiContent> Rig = [ApiContent.Of(StoredRigJson.Rig, "rig.json")];

    /// <summary>The operation that lists rigs.</summary>
    public static ApiOperation List { get; } = new()
    {
        Name = "listRigs",
        Group = Group,
        Summary = "The rigs that are kept, the last changed first.",
        Answers = [ApiContent.Of(StoredRigJson.List, "rigs.json")],
        Refusals = [ProblemKind.Store],
    };

    /// <summary>The operation that tells one rig.</summary>
    public static ApiOperation Get { get; } = new()
    {
        Name = "getRig",
        Group = Group,
        Summary = "One rig, with its file's text and its revision.",
        Names = [Id],
        Answers = Rig,
        TellsRevision = true,
        Refusals = [ProblemKind.Store],
    };

    /// <summary>The operation that stores a new rig.</summary>
    public static ApiOperation Add { get; } = new()
    {
        Name = "addRig",
        Group = Group,
        Summary = "Keeps a new rig.",
        Status = StatusCodes.Status201Created,
        Bodies = ApiContent.Rig,
        Answers = Rig,
        TellsRevision = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <summary>Keeps an edit.</summary>
    public static ApiOperation Save { get; } = new()
    {
        Name = "saveRig",
        Group = Group,
        Summary = "Keeps an edit of a rig: its file's new text.",
        Names = [Id],
        NeedsRevision = true,
        Options = [What],
        Bodies = ApiContent.Rig,
        Answers = Rig,
        TellsRevision = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Conflict, ProblemKind.RevisionMissing, ProblemKind.Store],
    };

    /// <summary>The operation that removes one rig.</summary>
    public static ApiOperation Remove { get; } = new()
    {
        Name = "removeRig",
        Group = Group,
        Summary = "Removes a rig from the list. It can be brought back on the page.",
        Names = [Id],
        NeedsRevision = true,
        Status = StatusCodes.Status204NoContent,
        Answers = [],
        Refusals = [ProblemKind.Conflict, ProblemKind.RevisionMissing, ProblemKind.Store],
    };
}
