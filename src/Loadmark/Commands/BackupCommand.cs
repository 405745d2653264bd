using Loadmark.Answers;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary><c>loadmark backup</c> and <c>loadmark restore</c>: all that is kept, to a file and from it.</summary>
internal sealed class BackupCommand(Surroundings around)
{
    /// <summary>Writes a backup.</summary>
    public int Run(Request.Backup request) => Answer(
        request.Json,
        CopiesIn(request.Data).BackUpAsync(request.File, request.Force),
        report => CopyJson.Write(around.Output, report),
        report => SheetPrinter.Print(around, sheet => CopyPage.Write(sheet, report)));

    /// <summary>Restores a backup.</summary>
    public int Run(Request.Restore request) => Answer(
        request.Json,
        CopiesIn(request.Data).RestoreAsync(request.File),
        report => CopyJson.Write(around.Output, report),
        report => SheetPrinter.Print(around, sheet => CopyPage.Write(sheet, report)));

    private StoreCopies CopiesIn(string? data) => new(DataFolder.From(data, around.Environment), around.Time);

    private int Answer<TReport>(bool json, Task<TReport> work, Action<TReport> write, Action<TReport> print)
    {
        try
        {
            // Ctrl-C does not end it halfway: it takes a moment, and is done whole.
            around.Interruption();
            var report = work.GetAwaiter().GetResult();
            (json ? write : print)(report);
            return ExitCode.Fine;
        }
        catch (StorageException fault)
        {
            if (json)
                CopyJson.Write(around.Output, fault);
            return new Complaints(around).Unusable(fault.Message);
        }
    }
}
