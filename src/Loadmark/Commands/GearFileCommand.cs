using Loadmark.Answers;
using Loadmark.Core.Gear;
using Loadmark.Files.Library;
using Loadmark.Hosting;
using Loadmark.Outputs;
using Loadmark.Sheets;
using Loadmark.Workshop.DataFolders;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear import</c> and <c>gear export</c>: the library from and to files.</summary>
internal sealed class GearFileCommand(Surroundings around)
{
    private readonly LibraryRoom _room = new(around);
    private readonly Complaints _complaints = new(around);

    /// <summary>Takes a file's gear: what is new, and of what differs what was asked for.</summary>
    public int Run(Request.GearImport request)
    {
        var file = GearFileReader.ReadFile(request.File);
        if (file.Errors.Length > 0)
            return _complaints.Unreadable([new CheckAnswer(request.File, null, file.Errors)], request.Json);
        return _room.Use(request, makes: true, async (library, stop) =>
        {
            var preview = ImportPreview.Of(await library.Cache.NowAsync(stop), file);
            return await TakeAsync(
                library,
                preview,
                new TakenTags(request.Take, request.TakeAll),
                $"imported from {Path.GetFileName(request.File)}",
                file.LeftOut,
                request.Json,
                stop);
        });
    }

    /// <summary>Writes the library to a file, as YAML or, by the end of the file's name, as a table.</summary>
    public int Run(Request.GearExport request) =>
        new OutputFiles(around, request.Data).Complaint(request.File, "gear export", request.Force) is { } complaint
        ? _complaints.Unusable(complaint)
        : _room.Use(request, makes: false, (library, stop) => ExportAsync(request, library, stop));

    private async Task<int> ExportAsync(Request.GearExport request, OpenLibrary library, CancellationToken stop)
    {
        var now = await library.Cache.NowAsync(stop);
        var isTable = Path.GetExtension(request.File).ToLowerInvariant() is ".csv" or ".tsv" or ".txt";
        var separator = Path.GetExtension(request.File).Equals(".tsv", StringComparison.OrdinalIgnoreCase) ? '\t' : ',';
        var gear = isTable ? ExportedGear.AsTable(now, request.Kind, separator) : ExportedGear.AsYaml(now, request.Kind);
        if (!new OutputFiles(around, request.Data).TrySave(request.File, gear.Text, request.Force))
            return ExitCode.Unreadable;
        var unread = now.Gear.Count(one => one.Piece is null);
        if (unread > 0)
            around.Error.WriteLine(
                $"loadmark: {unread} pieces were left out: a newer version of the program wrote them, and this one cannot read them.");
        if (isTable && request.Kind is null && now.Gear.Any(static one => one.Kind != GearKind.Load))
            around.Error.WriteLine("loadmark: a table holds gear of one kind; these are the loads. Use --kind supply and --kind lead for the others, or a file whose name ends in .yaml for all.");
        if (request.Json)
            ImportJson.WriteExport(around.Output, request.File, gear.Count);
        else
            SheetPrinter.Print(around, sheet => ImportPage.WriteExport(sheet, gear.Count, request.File));
        return ExitCode.Fine;
    }

    /// <summary>Takes gear, and says what was taken and what was not.</summary>
    public async Task<int> TakeAsync(
        OpenLibrary library,
        ImportPreview preview,
        TakenTags take,
        string what,
        IReadOnlyList<string> leftOut,
        bool json,
        CancellationToken stop)
    {
        if (take.Strangers(preview).FirstOrDefault() is { } stranger)
            return _complaints.Unusable($"--take: there is no {stranger} to take. Nothing was changed.");
        var result = await library.Editor.TakeAsync(preview, take.Has, what, stop);
        foreach (var column in leftOut)
            around.Error.WriteLine($"loadmark: {TerminalText.Neutral($"column {column}")}");
        if (json)
            ImportJson.Write(around.Output, preview, result, leftOut);
        else
            SheetPrinter.Print(around, sheet => ImportPage.Write(sheet, preview, result));
        return preview.Rows.Any(static row => row.State == ImportState.Refused) || result.Overtaken.Length > 0
            ? ExitCode.Unreadable
            : ExitCode.Fine;
    }
}
