using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Files;
using Loadmark.Outputs;
using Loadmark.Processes;
using Loadmark.Terminal;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary><c>loadmark backup</c> and <c>loadmark restore</c>: all that is kept, to a file and from it.</summary>
internal sealed class BackupCommand(CommandInput input)
{
    /// <summary>The command that writes a backup.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = "all that is kept, with every edit, in one file",
        Parameters = [new("FILE", "Where to. The page may be open meanwhile; the copy is of one moment, and checked whole.")],
        Options = [CommonOptions.Force with { Text = "Replace a file of that name. Without it nothing is ever replaced." }],
        Needs = "the name of one file to write to",
        IsOnStore = true,
        Json = "One object: file, rigs, gear, unreadableRigs, bytes; or fault and message.",
        Example = "loadmark backup monday.db",
        Documentation = "docs/keeping.md",
        Run = static input => new BackupCommand(input).BackUp(),
    };

    /// <summary>The command that restores one.</summary>
    public static CommandSpec RestoreSpec { get; } = new()
    {
        Question = "puts a backup in the place of all that is kept",
        Parameters =
        [
            new(
                "FILE",
                "A backup. It is checked first, and only read. What is kept now is copied to a file beside the database, "
                + "which the answer names."),
        ],
        Needs = "the name of one backup",
        IsOnStore = true,
        Json = "One object: file, rigs, gear, unreadableRigs, previous, wasOlder; or fault and message.",
        Note = "The page may be open meanwhile. It is told at its next edit of a rig, and nothing is overwritten.",
        Example = "loadmark restore monday.db",
        Documentation = "docs/keeping.md",
        Run = static input => new BackupCommand(input).Restore(),
    };

    private int BackUp()
    {
        if (input.Words is not [{ Length: > 0 } file])
            return input.Refuse();
        if (OutputFiles.ComplaintOfKind(file, "backup") is { } complaint)
            return input.Complaints.Unusable(complaint);
        return Answer(
            Copies.BackUpAsync(file, input.Has(CommonOptions.Force)),
            report => CopyJson.Write(input.Process.Output, report),
            report => SheetPrinter.Print(input.Process, sheet => CopyPage.Write(sheet, report)));
    }

    private int Restore()
    {
        if (input.Words is not [{ Length: > 0 } file])
            return input.Refuse();

        // A backup is read more than once, which a pipe cannot be.
        if (OrdinaryFile.MayBeAPipe(file) && !OrdinaryFile.Is(file))
            return input.Complaints.Unusable($"{file} is no ordinary file, and a backup is one. Nothing was restored.");
        return Answer(
            Copies.RestoreAsync(file),
            report => CopyJson.Write(input.Process.Output, report),
            report => SheetPrinter.Print(input.Process, sheet => CopyPage.Write(sheet, report)));
    }

    private StoreCopies Copies => new(DataFolder.From(input.Data, input.Process.Environment), input.Process.Time);

    private int Answer<TReport>(Task<TReport> work, Action<TReport> write, Action<TReport> print)
    {
        try
        {
            // Ctrl-C does not end it halfway: it takes a moment, and is done whole.
            input.Process.Interruption();
            var report = work.GetAwaiter().GetResult();
            (input.Json ? write : print)(report);
            return ExitCode.Fine;
        }
        catch (StorageException fault)
        {
            if (input.Json)
                CopyJson.Write(input.Process.Output, fault);
            return input.Complaints.Unusable(fault.Message);
        }
    }
}
