using System.Collections.Immutable;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Parsing;
using Loadmark.Storage.Faults;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Requests;

/// <summary>A request, taken whole and held to what its address takes.</summary>
/// <param name="Options">The request's options.</param>
/// <param name="MediaType">Which of the media types that are taken its body has; null where it has none.</param>
/// <param name="Body">The request's body.</param>
/// <param name="Accepted">The media types that it asks to be answered in; empty for any.</param>
/// <param name="Library">The gear that a rig in its body may take <c>from: library</c>; null where it has no body.</param>
internal sealed record ApiRequest(
    OptionValues Options, string? MediaType, ReadOnlyMemory<byte> Body, IReadOnlyList<string> Accepted, IGearLookup? Library)
{
    /// <summary>The name that the answer carries for the rig's file.</summary>
    public string File => Options.Text(ApiOptions.File) ?? "";

    /// <summary>Whether the request asks to be answered in a media type by its name.</summary>
    public bool Accepts(string mediaType) => Accepted.Contains(mediaType, StringComparer.OrdinalIgnoreCase);

    /// <summary>The media type that a good answer has: the first that is asked for by name, else the common one.</summary>
    public string AnswerTypeOf(ApiOperation operation) =>
        operation.Answers.Select(static answer => answer.MediaType).FirstOrDefault(Accepts) ?? operation.Answers[0].MediaType;

    /// <summary>Reads the body as a rig.</summary>
    /// <param name="text">Its text.</param>
    /// <param name="refusal">What keeps it from being read; null where nothing does.</param>
    /// <returns>The rig; null where it cannot be read.</returns>
    public Rig? ReadRig(out string text, out Problem? refusal)
    {
        text = "";
        if (MediaType == ApiContent.Json && BodyObject.IsText(Body.Span))
        {
            if (BodyObject.ReadText(Body, out refusal) is not { } quoted)
                return null;
            text = quoted;
            return Of(ReadRig(text, out refusal), ref refusal);
        }

        text = RigFile.Decode(Body.Span, File, out var errors) ?? "";
        refusal = null;
        return Of(errors.IsEmpty ? ReadRig(text, out refusal) : new RigFileResult(null, errors), ref refusal);
    }

    /// <summary>Reads a text of the body as a rig.</summary>
    /// <param name="text">The text.</param>
    /// <param name="refusal">What keeps the library from being read where the rig takes gear from it; else null.</param>
    /// <returns>The rig, or its errors; null where the library cannot be read.</returns>
    public RigFileResult? ReadRig(string text, out Problem? refusal)
    {
        refusal = null;
        try
        {
            return RigFileReader.Read(text, File, Library);
        }
        catch (StorageException fault)
        {
            refusal = new Problem(ProblemKind.Store, $"The rig takes gear from the library, which cannot be read. {fault.Message}");
            return null;
        }
    }

    /// <summary>Reads the body as a rig.</summary>
    /// <param name="refusal">What keeps it from being read; null where nothing does.</param>
    /// <returns>The rig; null where it cannot be read.</returns>
    public Rig? ReadRig(out Problem? refusal) => ReadRig(out _, out refusal);

    private static Rig? Of(RigFileResult? reading, ref Problem? refusal)
    {
        if (reading is { Rig: null })
            refusal = UnreadableProblem.Of(reading.Errors, []);
        return reading?.Rig;
    }
}
