using System.Text.Json;
using Microsoft.AspNetCore.Http;

namespace Loadmark.Web.Problems;

/// <summary>One refusal, as RFC 9457 ("Problem Details for HTTP APIs") tells it.</summary>
/// <param name="Kind">Which kind.</param>
/// <param name="Detail">What is wrong this time, for people.</param>
public sealed record Problem(ProblemKind Kind, string Detail)
{
    /// <summary>The HTTP status; that of the kind unless said otherwise.</summary>
    public int Status { get; init; } = Kind.Status;

    /// <summary>After how many seconds to ask again; null where that would not help.</summary>
    public int? RetryAfterSeconds { get; init; }

    /// <summary>Writes further members; null for none.</summary>
    public Action<Utf8JsonWriter>? More { get; init; }

    /// <summary>A body that could not be received.</summary>
    /// <param name="status">The status that the server gives it: 400, 408 or 413.</param>
    public static Problem OfBody(int status) => status == StatusCodes.Status413PayloadTooLarge
        ? new Problem(ProblemKind.TooLarge, "The body is larger than anything that is taken here.")
        : new Problem(ProblemKind.BadRequest, "The body did not arrive as it was announced.") { Status = status };
}
