using Loadmark.Answers;
using Loadmark.Files;
using Loadmark.Hosting;
using Loadmark.Outputs;
using Loadmark.Sheets;
using Loadmark.Sources;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary><c>loadmark rigs list</c>, <c>rigs import</c> and <c>rigs export</c>: the rigs that are kept, from and to files.</summary>
internal sealed class RigsCommand(Surroundings around, IRigSource source)
{
    private readonly LibraryRoom _room = new(around);
    private readonly Complaints _complaints = new(around);

    /// <summary>Lists the rigs.</summary>
    public int Run(Request.RigsList request) => _room.Use(request, makes: false, async (library, stop) =>
    {
        var rigs = await library.Store.Rigs.ListAsync(stop);
        if (request.Json)
            RigsJson.Write(around.Output, rigs);
        else
            SheetPrinter.Print(around, sheet => RigsPage.Write(sheet, rigs));
        return ExitCode.Fine;
    });

    /// <summary>Keeps rig files, each as it stands; one that cannot be read keeps no other from it.</summary>
    public int Run(Request.RigsImport request) => _room.Use(request, makes: true, async (library, stop) =>
    {
        var kept = new List<RigSummary>();
        var faulty = new List<CheckAnswer>();
        var now = await library.Cache.NowAsync(stop);
        foreach (var path in request.Files)
        {
            var (reading, text) = source.ReadWithText(path, now);
            if (reading.Rig is not { } rig)
            {
                faulty.Add(new CheckAnswer(path, null, reading.Errors));
                continue;
            }

            var added = await library.Store.Rigs.AddAsync(rig.Name, text!, stop);
            kept.Add(new RigSummary(added.Id, added.Name, added.Changed, added.Revision));
        }

        _complaints.Tell(faulty);
        if (request.Json)
            RigsJson.Write(around.Output, kept);
        else
            SheetPrinter.Print(around, sheet => RigsPage.WriteKept(sheet, kept));
        return faulty.Count > 0 ? ExitCode.Unreadable : ExitCode.Fine;
    });

    /// <summary>Writes a rig to a file; what it takes from the library is written into it, unless it is asked not to be.</summary>
    public int Run(Request.RigsExport request) =>
        new OutputFiles(around, request.Data).Complaint(request.File, "rigs export", request.Force) is { } complaint
        ? _complaints.Unusable(complaint)
        : _room.Use(request, makes: false, (library, stop) => ExportAsync(request, library, stop));

    private async Task<int> ExportAsync(Request.RigsExport request, OpenLibrary library, CancellationToken stop)
    {
        if (await FindAsync(library, request.Rig, stop) is not { } rig)
            return ExitCode.Unreadable;
        var text = rig.Text;
        if (!request.IsLinked)
        {
            var (update, errors) = RigFileEditor.WriteOut(text, await library.Cache.NowAsync(stop));
            if (update is null)
                return _complaints.Unreadable([new CheckAnswer(rig.Name, null, errors)], request.Json);
            text = update.Text;
        }

        if (!new OutputFiles(around, request.Data).TrySave(request.File, text, request.Force))
            return ExitCode.Unreadable;
        if (request.Json)
            RigsJson.Write(around.Output, [new RigSummary(rig.Id, rig.Name, rig.Changed, rig.Revision)]);
        else
            SheetPrinter.Print(around, sheet => RigsPage.WriteExport(sheet, rig.Name, request.File, isWrittenOut: text != rig.Text));
        return ExitCode.Fine;
    }

    private async Task<StoredRig?> FindAsync(OpenLibrary library, string typed, CancellationToken stop)
    {
        var rigs = await library.Store.Rigs.ListAsync(stop);
        List<RigSummary> found = [.. rigs.Where(rig => $"{rig.Id}".Equals(typed, StringComparison.OrdinalIgnoreCase) || rig.Name.Equals(typed, StringComparison.OrdinalIgnoreCase))];
        if (found.Count == 1)
            return await library.Store.Rigs.FindAsync(found[0].Id, stop);
        var nearest = Core.Texts.NearestWord.Find(typed, rigs.Select(static rig => rig.Name));
        _complaints.Unusable(found.Count > 1
            ? $"there are {found.Count} rigs called '{typed}'. Name one by its id: {string.Join(", ", found.Select(static rig => rig.Id))}."
            : $"there is no rig called '{typed}'.{(nearest is null ? " See: loadmark rigs list" : $" Did you mean '{nearest}'?")}");
        return null;
    }
}
