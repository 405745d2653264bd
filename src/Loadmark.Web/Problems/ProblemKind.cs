using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Problems;

/// <summary>One kind of refusal: what a program tells them apart by.</summary>
/// <param name="Name">The kind's name, the last part of the problem's <c>type</c>.</param>
/// <param name="Status">The HTTP status that it commonly comes with.</param>
/// <param name="Title">What it is, in a few words; the same each time.</param>
/// <param name="Meaning">What it means and what to do, in a sentence or two.</param>
public sealed record ProblemKind(string Name, int Status, string Title, string Meaning)
{
    /// <summary>Where the kinds are told apart and explained.</summary>
    public const string Folder = "/api/problems/";

    /// <summary>The request itself is wrong.</summary>
    public static ProblemKind BadRequest { get; } = new("bad-request", StatusCodes.Status400BadRequest, "The request cannot be used",
        "An option in the address, the JSON around texts, or a header is not as the document says. Nothing was looked at.");

    /// <summary>Somebody without the key.</summary>
    public static ProblemKind NoKey { get; } = new("no-key", StatusCodes.Status401Unauthorized, "The request brings no key, or a wrong one",
        "Send the header that stands in the file loadmark-PORT.header of the folder that rigs are kept in: Authorization: Bearer, "
        + "and the key of this start of the program.");

    /// <summary>Somebody who has no business here.</summary>
    public static ProblemKind Refused { get; } = new("refused", StatusCodes.Status403Forbidden, "Not from here",
        "Loadmark answers this machine only, and no page of another address.");

    /// <summary>There is no such thing.</summary>
    public static ProblemKind NotFound { get; } = new("not-found", StatusCodes.Status404NotFound, "There is no such thing",
        "Nothing is at this address, or it was removed.");

    /// <summary>The address takes other methods.</summary>
    public static ProblemKind MethodNotAllowed { get; } = new(
        "method-not-allowed",
        StatusCodes.Status405MethodNotAllowed,
        "The address does not take that method",
        "The header Allow says which methods it takes.");

    /// <summary>Somebody else changed what is kept.</summary>
    public static ProblemKind Conflict { get; } = new(
        "conflict",
        StatusCodes.Status412PreconditionFailed,
        "Somebody else changed it meanwhile",
        "Nothing was done. The rig as it is kept now is in 'present', a piece of gear in 'presentGear': look at both, "
        + "and ask again with its revision.");

    /// <summary>Another piece of gear has the tag.</summary>
    public static ProblemKind TagTaken { get; } = new("tag-taken", StatusCodes.Status409Conflict, "Another piece of gear has the tag",
        "Nothing was done. Each load, supply and lead of the library has a tag of its own; the piece that has it is in 'presentGear'.");

    /// <summary>Too much was sent.</summary>
    public static ProblemKind TooLarge { get; } = new("too-large", StatusCodes.Status413PayloadTooLarge, "That is more than a rig ever is",
        "The body is over the limit that the document tells. Nothing was looked at.");

    /// <summary>What was sent is of the wrong kind.</summary>
    public static ProblemKind UnsupportedMediaType { get; } = new(
        "unsupported-media-type",
        StatusCodes.Status415UnsupportedMediaType,
        "The body is of a kind that is not taken here",
        "The header Content-Type must be one that the document lists for the address, in UTF-8 and not compressed.");

    /// <summary>A rig or a price list cannot be read.</summary>
    public static ProblemKind Unreadable { get; } = new("unreadable", StatusCodes.Status422UnprocessableEntity, "The text cannot be read",
        "Each fault is in 'errors' (of the rig, or of the gear) or 'priceErrors' (of the price list) or 'readingErrors' (of readings), "
        + "with its place and what was expected there, as the commands tell it.");

    /// <summary>A rig without wiring has no circuit.</summary>
    public static ProblemKind NoWiring { get; } = new(
        "no-wiring",
        StatusCodes.Status422UnprocessableEntity,
        "The rig has no wiring that can be computed",
        "Have it planned first, and put the feeds into the rig.");

    /// <summary>A change without the revision that it starts from.</summary>
    public static ProblemKind RevisionMissing { get; } = new(
        "revision-missing",
        StatusCodes.Status428PreconditionRequired,
        "The change does not say which revision it starts from",
        "Send the revision in the header If-Match, in quotes, so that nobody's edit is lost.");

    /// <summary>A fault in the program.</summary>
    public static ProblemKind Fault { get; } = new("fault", StatusCodes.Status500InternalServerError, "A fault in the program",
        "It says nothing about the rig. Whoever looks into it finds it by the 'id'.");

    /// <summary>Too much is asked for at once.</summary>
    public static ProblemKind Busy { get; } = new("busy", StatusCodes.Status503ServiceUnavailable, "Too much is asked for at once",
        "Ask again after the seconds in the header Retry-After.");

    /// <summary>Nothing can be kept at the moment.</summary>
    public static ProblemKind Store { get; } = new(
        "store",
        StatusCodes.Status503ServiceUnavailable,
        "What is kept cannot be read or changed",
        "The disk or the database is in the way; 'detail' says how, and what to do. What was kept before is kept still.");

    /// <summary>An answer took too long.</summary>
    public static ProblemKind OutOfTime { get; } = new("out-of-time", StatusCodes.Status504GatewayTimeout, "The answer took too long",
        "The computation was ended at the time limit that the document tells. A smaller rig or fewer samples may do.");

    /// <summary>All kinds of problems.</summary>
    public static IReadOnlyList<ProblemKind> All { get; } =
    [
        BadRequest, NoKey, Refused, NotFound, MethodNotAllowed, TagTaken, Conflict, TooLarge, UnsupportedMediaType, Unreadable, NoWiring,
        RevisionMissing, Fault, Busy, Store,
        OutOfTime,
    ];

    /// <summary>The kind that a bare status stands for.</summary>
    /// <param name="status">A status of 400 or more.</param>
    public static ProblemKind Of(int status) =>
        All.FirstOrDefault(kind => kind.Status == status) ?? (status < StatusCodes.Status500InternalServerError ? BadRequest : Fault);
}
