using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Files;
using Loadmark.Outputs;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Storage;
using Loadmark.Storage.Copies;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary>
/// <c>loadmark backup</c>, <c>loadmark restore</c> and <c>loadmark salvage</c>: all that is kept, to a file, from it, and out of a damaged
/// one.
/// </summary>
internal sealed class BackupCommand(CommandInput input)
{
    private static readonly OptionSpec Last = new(
        "last",
        OptionKind.Flag,
        "Take the last automatic backup that is whole. There is one of each day of use, and one from before an upgrade.");

    private static readonly OptionSpec Out = new(
        "out", OptionKind.Text, "Write what was salvaged to this file, as a backup, and leave the damaged one where it is.")
    { Placeholder = "FILE", Needs = "the name of a file that is not there yet" };

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
                "A backup. It is checked first, and only read. What is kept now is copied to a file of its own, which the answer names; "
                + "where it is damaged it is set aside. Without a file the automatic backups are listed.")
            {
                IsOptional = true,
            },
        ],
        Options = [Last],
        Needs = "the name of one backup, or --last",
        IsOnStore = true,
        Json = "One object: file, rigs, gear, unreadableRigs, previous, wasOlder, wasDamaged; backups, where they are listed; "
            + "or fault and message.",
        Note = "The page may be open meanwhile. It is told at its next edit of a rig, and nothing is overwritten.",
        Example = "loadmark restore monday.db",
        Documentation = "docs/keeping.md",
        Run = static input => new BackupCommand(input).Restore(),
    };

    /// <summary>The command that takes what can still be read out of a damaged database.</summary>
    public static CommandSpec SalvageSpec { get; } = new()
    {
        Question = "keeps what can still be read of a damaged database",
        Options = [Out],
        IsOnStore = true,
        Json = "One object: file, aside, rigs, gear, lost, fromBackup; or fault and message.",
        Note = "Row by row, what is as it was saved goes to a new database; what is lost is named, and rigs and gear that are lost come "
            + "from the last automatic backup. The damaged file gets another name and is never changed.",
        Example = "loadmark salvage",
        Documentation = "docs/keeping.md",
        Run = static input => new BackupCommand(input).Salvage(),
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

    private int Restore() => (input.Words, input.Has(Last)) switch
    {
        ([{ Length: > 0 } file], false) => Restore(file),
        ([], true) => Restore(Copies.RestoreLastAsync()),
        ([], false) => List(Copies.Kept()),
        _ => input.Refuse(),
    };

    private int Restore(string file) =>
        // A backup is read more than once, which a pipe cannot be.
        OrdinaryFile.MayBeAPipe(file) && !OrdinaryFile.Is(file)
            ? input.Complaints.Unusable($"{file} is no ordinary file, and a backup is one. Nothing was restored.")
            : Restore(Copies.RestoreAsync(file));

    private int Restore(Task<RestoreReport> work) => Answer(
        work,
        report => CopyJson.Write(input.Process.Output, report),
        report => SheetPrinter.Print(input.Process, sheet => CopyPage.Write(sheet, report)));

    private int List(IReadOnlyList<KeptCopy> copies)
    {
        if (input.Json)
            CopyJson.Write(input.Process.Output, copies);
        else
            SheetPrinter.Print(input.Process, sheet => CopyPage.Write(sheet, copies));
        return ExitCode.Fine;
    }

    private int Salvage()
    {
        var file = input.Text(Out);
        if (input.Words.Count > 0)
            return input.Refuse();
        if (file is not null && OutputFiles.ComplaintOfKind(file, "salvage") is { } complaint)
            return input.Complaints.Unusable(complaint);
        return Answer(
            Copies.SalvageAsync(file),
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
