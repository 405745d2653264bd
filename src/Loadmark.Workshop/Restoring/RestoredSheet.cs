using Loadmark.Codes.Packing;
using Loadmark.Core.Checks;
using Loadmark.Files;
using Loadmark.Files.Parsing;

namespace Loadmark.Workshop.Restoring;

/// <summary>What pictures of a sheet give back: the rig file, or why not.</summary>
public sealed record RestoredSheet
{
    /// <summary>What was found of the rig file; null where nothing was, or of more than one.</summary>
    public GatheredText? Found { get; init; }

    /// <summary>The text of the rig file, as it was when the sheet was made, to the letter; null where it is not whole.</summary>
    public string? Text => Found?.Text;

    /// <summary>The rig that the text says, or what is wrong with the text; null where there is none.</summary>
    public RigFileResult? Reading { get; init; }

    /// <summary>The rig's version, as it stands at the foot of the sheet; null where the text cannot be read.</summary>
    public string? Version => Reading?.Rig is { } rig ? RigVersion.Of(rig) : null;

    /// <summary>Why there is no text, in sentences; null where there is one.</summary>
    public string? Complaint { get; init; }

    /// <summary>What else is to be told, in sentences; empty for nothing.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Puts together what was found.</summary>
    /// <param name="codes">The codes.</param>
    /// <param name="fileName">The name that errors in the text carry.</param>
    /// <param name="library">The library; null where there is none.</param>
    public static RestoredSheet Of(GatheredCodes codes, string fileName, IGearLookup? library)
    {
        ArgumentNullException.ThrowIfNull(codes);
        var texts = codes.Texts();
        var remark = RemarkOn(codes);
        if (texts is not [var found])
            return new RestoredSheet { Complaint = texts.Length > 1 ? Mixed(texts, library) : None(codes), Remark = remark };
        if (found.Text is { } text)
            return new RestoredSheet { Found = found, Reading = RigFileReader.Read(text, fileName, library), Remark = remark };
        return new RestoredSheet { Found = found, Complaint = found.IsWhole ? Unfit : Missing(found), Remark = remark };
    }

    private const string Unfit =
        "The codes were read, but do not fit together, so nothing was restored. Use pictures of one sheet, as it was printed.";

    private static string Missing(GatheredText found)
    {
        var missing = found.Missing.ToList();
        const string how = "flat, sharp and in even light.";
        return missing is [var one]
            ? $"Code {one} of {found.Count} was not found. Photograph it nearer, {how}"
            : $"Codes {Phrases.List([.. missing.Select(static number => $"{number}")])} of {found.Count} were not found. "
                + $"Photograph them nearer, {how}";
    }

    private static string None(GatheredCodes codes) =>
        codes.CountOf(CodeKind.Newer) > 0
            ? "The sheet was made by a newer version of Loadmark. Restore it with that one."
            : codes.CountOf(CodeKind.Damaged) > 0
                ? "Codes of a sheet were found, but they are damaged. Photograph them again, nearer, flat, sharp and in even light."
                : "No code of a sheet was found. Show the whole code with the white around it: nearer, flat, sharp and in even light.";

    private static string Mixed(IReadOnlyCollection<GatheredText> texts, IGearLookup? library) =>
        $"The pictures show codes of {texts.Count} rig files: {Phrases.List([.. texts.Select(text => Described(text, library))])}. "
        + "Give the pictures of one alone.";

    private static string Described(GatheredText text, IGearLookup? library)
    {
        var name = text.Text is { } whole ? RigFileReader.Read(whole, "", library).Rig?.Name : null;
        return name is null ? $"one with {text.Found.Length} of {text.Count} codes" : $"'{name}' with all of its codes";
    }

    private static string RemarkOn(GatheredCodes codes) => codes.CountOf(CodeKind.Foreign) switch
    {
        0 => "",
        1 => "A QR code that is not of a sheet was passed over.",
        var count => $"{count} QR codes that are not of a sheet were passed over.",
    };
}
