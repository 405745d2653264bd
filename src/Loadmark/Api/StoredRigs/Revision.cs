using System.Globalization;
using Loadmark.Web.Problems;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Api.StoredRigs;

/// <summary>The revision that a change starts from, as the header <c>If-Match</c> tells it (RFC 9110, section 13.1.1).</summary>
internal static class Revision
{
    /// <summary>A revision that no rig has.</summary>
    private const long None = 0;

    /// <summary>Reads the revision that a request starts from.</summary>
    /// <param name="request">The request.</param>
    /// <param name="refusal">What is wrong with it; null where nothing is.</param>
    public static long? In(HttpRequest request, out Problem? refusal)
    {
        refusal = null;
        var sent = request.Headers.IfMatch;
        if (sent.Count == 0)
        {
            refusal = new Problem(ProblemKind.RevisionMissing, ProblemKind.RevisionMissing.Meaning);
            return null;
        }

        // "*" would mean whatever is there, and lose what somebody else has kept.
        if (!EntityTagHeaderValue.TryParseList([.. sent.OfType<string>()], out var tags) || tags is not [var tag] || tag.Tag == "*")
        {
            refusal = new Problem(ProblemKind.BadRequest, "If-Match has to be one revision in quotes, such as \"3\".");
            return null;
        }

        // What is no number of ours is a revision that the rig does not have; so is a weak one, by the comparison that If-Match asks for.
        return !tag.IsWeak && long.TryParse(tag.Tag.AsSpan().Trim('"'), NumberStyles.None, CultureInfo.InvariantCulture, out var revision)
            ? revision
            : None;
    }
}
