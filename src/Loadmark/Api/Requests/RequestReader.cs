using System.Buffers;
using Loadmark.Files.Parsing;
using Loadmark.Storage.Faults;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Library;
using Microsoft.Net.Http.Headers;

namespace Loadmark.Api.Requests;

/// <summary>Takes a request whole, within the limits.</summary>
/// <param name="limits">The limits.</param>
/// <param name="cache">The gear that rigs may take from the library.</param>
internal sealed class RequestReader(ApiLimits limits, LibraryCache cache)
{
    private const int Piece = 16 * 1024;

    /// <summary>Takes a request.</summary>
    /// <param name="context">The request.</param>
    /// <param name="operation">What its address takes.</param>
    /// <returns>The request, or why it is not taken.</returns>
    public async Task<(ApiRequest? Taken, Problem? Refusal)> ReadAsync(HttpContext context, ApiOperation operation)
    {
        var request = context.Request;
        if (OptionValues.Read(request.Query, operation.Options, out var refusal) is not { } options)
            return (null, refusal);
        if (operation.Bodies.Count == 0)
            return (new ApiRequest(options, null, ReadOnlyMemory<byte>.Empty, AcceptedBy(request), null), null);
        if (MediaTypeOf(request, operation) is not { } mediaType)
        {
            var taken = string.Join(" or ", operation.Bodies.Select(static body => body.MediaType));
            return (null, new Problem(ProblemKind.UnsupportedMediaType, $"Content-Type has to be {taken}, in UTF-8 and not compressed."));
        }

        return await ReadAsync(request.Body, context.RequestAborted) is { } body
            ? (new ApiRequest(options, mediaType, body, AcceptedBy(request), await LibraryAsync(context.RequestAborted)), null)
            : (null, new Problem(ProblemKind.TooLarge, $"The body is over {limits.LargestBody} bytes."));
    }

    /// <summary>The library as it is now. A rig that takes nothing from there is read though the library cannot be.</summary>
    private async Task<IGearLookup> LibraryAsync(CancellationToken left)
    {
        try
        {
            return await cache.NowAsync(left);
        }
        catch (StorageException fault)
        {
            return new ClosedLibrary(fault);
        }
    }

    private static List<string> AcceptedBy(HttpRequest request) =>
        MediaTypeHeaderValue.TryParseList(request.Headers.Accept, out var accepted)
        ? [.. accepted.Where(static type => type.Quality is not 0).Select(static type => type.MediaType.ToString())]
        : [];

    private static string? MediaTypeOf(HttpRequest request, ApiOperation operation)
    {
        if (request.Headers.ContentEncoding.Count > 0 || !MediaTypeHeaderValue.TryParse(request.ContentType, out var sent))
            return null;
        var charset = HeaderUtilities.RemoveQuotes(sent.Charset);
        if (charset.HasValue && !charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase))
            return null;
        return operation.Bodies.Select(static body => body.MediaType)
            .FirstOrDefault(type => sent.MediaType.Equals(type, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The body; null when it is too large, without having kept more than the limit of it.</summary>
    private async Task<ReadOnlyMemory<byte>?> ReadAsync(Stream body, CancellationToken left)
    {
        var bytes = new ArrayBufferWriter<byte>();
        while (true)
        {
            var read = await body.ReadAsync(bytes.GetMemory(Piece), left);
            if (read == 0)
                return bytes.WrittenMemory;
            bytes.Advance(read);
            if (bytes.WrittenCount > limits.LargestBody)
                return null;
        }
    }
}
