using Loadmark.Api.Requests;
using Loadmark.Files.Errors;
using Loadmark.Files.Library;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Library;

/// <summary>Reads bodies that are files of gear.</summary>
internal static class GearBody
{
    /// <summary>Reads all gear that a body has.</summary>
    /// <param name="request">The request.</param>
    /// <param name="refusal">What keeps it as a whole from being read; null where nothing does.</param>
    /// <returns>The rows, refused ones too; null where it cannot be read.</returns>
    public static GearFileResult? Read(ApiRequest request, out Problem? refusal)
    {
        GearFileResult file;
        if (request.MediaType == ApiContent.Json && BodyObject.IsText(request.Body.Span))
        {
            // What a generated client sends of a text, be it YAML or a table.
            if (BodyObject.ReadText(request.Body, out refusal) is not { } quoted)
                return null;
            file = GearFileReader.Read(quoted, "");
        }
        else
        {
            file = GearFileReader.Read(request.Body.Span, request.MediaType == ApiContent.Csv ? ".csv" : ".yaml");
        }

        refusal = file.Errors.Length > 0 ? UnreadableProblem.Of(file.Errors, []) : null;
        return refusal is null ? file : null;
    }

    /// <summary>Reads the one piece in a body.</summary>
    /// <param name="request">The request.</param>
    /// <param name="refusal">What keeps it from being read; null where nothing does.</param>
    /// <returns>The row with the piece; null where there is none.</returns>
    public static GearFileRow? ReadOne(ApiRequest request, out Problem? refusal)
    {
        if (Read(request, out refusal) is not { } file)
            return null;
        if (file.Rows is not [var row])
        {
            refusal = new Problem(
                ProblemKind.BadRequest,
                $"The body has to have one piece of gear, and has {file.Rows.Length}. Files with several go to /api/gear/import.");
            return null;
        }

        if (row.Refusal is { } fault)
            refusal = UnreadableProblem.Of([new FileError("", Math.Max(row.Line, 1), 1, fault.Because) { Expected = fault.Expected }], []);
        return row.Piece is null ? null : row;
    }
}
