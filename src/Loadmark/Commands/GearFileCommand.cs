using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Gear;
using Loadmark.Files.Library;
using Loadmark.Processes;
using Loadmark.Outputs;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Workshop.DataFolders;
using Loadmark.Workshop.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear import</c> and <c>gear export</c>: the library from and to files.</summary>
internal sealed class GearFileCommand(CommandInput input)
{
    private readonly LibrarySession _session = new(input);

    /// <summary>The command that takes gear in.</summary>
    public static CommandSpec ImportSpec { get; } = new()
    {
        Question = "takes what is new in a file of gear; what differs is shown and left",
        Parameters = [new("FILE", "YAML with loads, supplies and leads, or a table.")],
        Options = [LibraryOptions.Take, LibraryOptions.TakeAll],
        Needs = "the path of one file",
        IsOnStore = true,
        Json = "One object: what was taken, what was not, and the columns that were left out.",
        Example = "loadmark gear import gear.yaml",
        Documentation = "docs/gear.md",
        Run = static input => new GearFileCommand(input).Import(),
    };

    /// <summary>The command that writes gear out.</summary>
    public static CommandSpec ExportSpec { get; } = new()
    {
        Question = "writes the library to a file",
        Parameters = [new("FILE", "YAML, or a table of one kind where the name ends in .csv, .tsv or .txt.")],
        Options = [QuestionSpecs.Kind, CommonOptions.Force],
        Needs = "the path of one file",
        IsOnStore = true,
        Json = "One object: file, and how many pieces it has.",
        Example = "loadmark gear export gear.yaml",
        Documentation = "docs/gear.md",
        Run = static input => new GearFileCommand(input).Export(),
    };

    private int Import()
    {
        if (input.Words is not [var path])
            return input.Refuse();
        var file = GearFrom(path);
        if (file.Errors.Length > 0)
            return input.Complaints.Unreadable([new CheckAnswer(path, null, file.Errors)], input.Json);
        return _session.Use(makes: true, async (library, stop) =>
        {
            var preview = ImportPreview.Of(await library.Cache.NowAsync(stop), file);
            return await TakeAsync(library, preview, $"imported from {Path.GetFileName(path)}", file.LeftOut, stop);
        });
    }

    private GearFileResult GearFrom(string path)
    {
        using var wait = InputWait.ForFile(input.Process, path);
        return GearFileReader.ReadFile(path, input.Process.Patience);
    }

    private int Export()
    {
        if (LibraryOptions.KindOf(input, out var unusable) is var kind && unusable is not null)
            return input.Refuse(unusable);
        if (input.Words is not [var file])
            return input.Refuse();
        return new OutputFiles(input.Process, input.Data).Complaint(file, "gear export", input.Has(CommonOptions.Force)) is { } complaint
            ? input.Complaints.Unusable(complaint)
            : _session.Use(makes: false, (library, stop) => ExportAsync(file, kind, library, stop));
    }

    private async Task<int> ExportAsync(string file, GearKind? kind, OpenLibrary library, CancellationToken stop)
    {
        var now = await library.Cache.NowAsync(stop);
        var isTable = Path.GetExtension(file).ToLowerInvariant() is ".csv" or ".tsv" or ".txt";
        var separator = Path.GetExtension(file).Equals(".tsv", StringComparison.OrdinalIgnoreCase) ? '\t' : ',';
        var gear = isTable ? ExportedGear.AsTable(now, kind, separator) : ExportedGear.AsYaml(now, kind);
        if (!new OutputFiles(input.Process, input.Data).TrySave(file, gear.Text, input.Has(CommonOptions.Force)))
            return ExitCode.Unreadable;
        var unread = now.Gear.Count(one => one.Piece is null);
        if (unread > 0)
            input.Process.Error.WriteLine(
                $"loadmark: {unread} pieces were left out: a newer version of the program wrote them, and this one cannot read them.");
        if (isTable && kind is null && now.Gear.Any(static one => one.Kind != GearKind.Load))
            input.Process.Error.WriteLine("loadmark: a table holds gear of one kind; these are the loads. "
                + "Use --kind supply and --kind lead for the others, or a file whose name ends in .yaml for all.");
        if (input.Json)
            ImportJson.WriteExport(input.Process.Output, file, gear.Count);
        else
            SheetPrinter.Print(input.Process, sheet => ImportPage.WriteExport(sheet, gear.Count, file));
        return ExitCode.Fine;
    }

    /// <summary>Takes gear, and says what was taken and what was not.</summary>
    /// <param name="library">The library.</param>
    /// <param name="preview">What would be taken.</param>
    /// <param name="what">What the change does, for the list of changes.</param>
    /// <param name="leftOut">The columns of a table that mean nothing here.</param>
    /// <param name="stop">Cancels.</param>
    /// <returns>The exit code.</returns>
    public async Task<int> TakeAsync(
        OpenLibrary library,
        ImportPreview preview,
        string what,
        IReadOnlyList<string> leftOut,
        CancellationToken stop)
    {
        var take = LibraryOptions.TakenIn(input);
        if (take.Strangers(preview).FirstOrDefault() is { } stranger)
            return input.Complaints.Unusable($"--take: there is no {stranger} to take. Nothing was changed.");
        var result = await library.Editor.TakeAsync(preview, take.Has, what, stop);
        foreach (var column in leftOut)
            input.Process.Error.WriteLine($"loadmark: {TerminalText.Neutral($"column {column}")}");
        if (input.Json)
            ImportJson.Write(input.Process.Output, preview, result, leftOut);
        else
            SheetPrinter.Print(input.Process, sheet => ImportPage.Write(sheet, preview, result));
        return preview.Rows.Any(static row => row.State == ImportState.Refused) || result.Overtaken.Length > 0
            ? ExitCode.Unreadable
            : ExitCode.Fine;
    }
}
