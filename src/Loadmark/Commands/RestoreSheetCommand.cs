using System.Text;
using Loadmark.Answers;
using Loadmark.Codes.Packing;
using Loadmark.Codes.Scans;
using Loadmark.CommandLines;
using Loadmark.Files;
using Loadmark.Outputs;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Sources;
using Loadmark.Terminal;
using Loadmark.Workshop.Restoring;

namespace Loadmark.Commands;

/// <summary><c>loadmark restore-sheet</c>: the rig file back from scans and photographs of its sheet.</summary>
internal sealed class RestoreSheetCommand(CommandInput input)
{
    private static readonly OptionSpec Out = new(
        "out", OptionKind.Text, "Write the rig file to this file; without it, to standard output.")
    { Placeholder = "FILE", Needs = "the name of a file", With = CommonOptions.Force };

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = "the rig file back from its sheet: from a scan, from photographs, or from the PDF",
        Parameters =
        [
            new("FILE", "A picture of the sheet's codes, PNG or JPEG, or a PDF. Several where one does not show all of them.")
            {
                IsRepeated = true,
            },
        ],
        Options = [Out],
        Needs = "the path of a picture or a PDF",
        Json = "One object: rig, version, file, codes, found, missing, errors; text, where it is not written to a file.",
        Note = "Exit code 1 means restored, but not a rig file that this version can read.",
        Example = "loadmark restore-sheet pit.pdf --out pit.rig.yaml",
        Documentation = "docs/sheet.md",
        Run = static input => new RestoreSheetCommand(input).Run(),
    };

    /// <summary>Reads the pictures, puts the codes together, writes the rig file, and says what it is.</summary>
    private int Run()
    {
        if (input.Words.Count == 0)
            return input.Refuse();
        var (file, force) = (input.Text(Out) is StandardInput.Mark ? null : input.Text(Out), input.Has(CommonOptions.Force));
        var outputs = new OutputFiles(input.Process, input.Data);
        if (file is not null && outputs.Complaint(file, Out.Typed, force, [.. input.Words]) is { } complaint)
            return input.Complaints.Unusable(complaint);
        var codes = new GatheredCodes();
        var isUnread = false;
        using (new WaitNotice(input.Process, "looking for codes"))
        {
            foreach (var path in input.Words)
                isUnread |= !Look(path, codes);
        }

        var restored = RestoredSheet.Of(codes, file ?? "the rig file", input.Rigs.Library);
        if (restored.Remark.Length > 0)
            input.Complaints.Warn(restored.Remark);
        if (restored.Text is not { } text)
        {
            // Where nothing could be looked at, that has been said, and there is nothing to be said of codes.
            if (!isUnread || codes.Texts().Length > 0)
                input.Complaints.Unusable(
                    restored.Complaint! + (restored.Found is { IsWhole: false } ? " Give all pictures together." : ""));
            if (input.Json)
                RestoredSheetJson.Write(input.Process.Output, restored, file: null);
            return ExitCode.Unreadable;
        }

        if (file is not null && !outputs.TrySave(file, text, force))
            return ExitCode.Unreadable;
        Answer(restored, text, file);
        return isUnread ? ExitCode.Unreadable : restored.Reading?.Rig is null ? ExitCode.Refused : ExitCode.Fine;
    }

    /// <summary>Looks for codes in a file; false where it cannot be read, which has been said then.</summary>
    private bool Look(string path, GatheredCodes codes)
    {
        using var wait = InputWait.ForFile(input.Process, path);
        var bytes = RigFile.LoadBytes(path, "picture of a sheet", ScanReader.MostBytes, input.Process.Patience, out var errors);
        if (bytes is null)
        {
            input.Complaints.Tell([new CheckAnswer(path, null, errors)]);
            return false;
        }

        var trouble = ScanReader.Read(bytes, codes, cancellation: input.Process.Interruption());
        if (trouble is not null)
            input.Complaints.Unusable($"{path}: {trouble}");
        return trouble is null;
    }

    private void Answer(RestoredSheet restored, string text, string? file)
    {
        if (input.Json)
        {
            RestoredSheetJson.Write(input.Process.Output, restored, file);
        }
        else if (file is null)
        {
            input.Process.Output.Write(Encoding.UTF8.GetBytes(text));
            input.Process.Output.Flush();
        }
        else
        {
            SheetPrinter.Print(input.Process, sheet => RestoredSheetPage.Write(sheet, restored, file));
        }

        if (restored.Reading is { Rig: null } unread)
        {
            input.Complaints.Warn("The rig file was restored as it was, but this version of Loadmark cannot read it:");
            input.Complaints.Tell([new CheckAnswer(file ?? "", null, unread.Errors)]);
        }
    }
}
