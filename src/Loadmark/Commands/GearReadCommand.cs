using Loadmark.Answers;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Workshop.DataFolders;
using Loadmark.Workshop.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear list</c> and <c>gear show</c>: what does the library know?</summary>
internal sealed class GearReadCommand(Surroundings around)
{
    private readonly LibraryRoom _room = new(around);

    /// <summary>Lists gear.</summary>
    public int Run(Request.GearList request) => _room.Use(request, makes: false, async (library, stop) =>
    {
        var found = await ListedGear.FindAsync(library.Store, library.Cache, request.Words, request.Kind, null, stop);
        if (request.Json)
            GearJson.WriteList(around.Output, found);
        else
            SheetPrinter.Print(around, sheet => GearListPage.Write(sheet, found, request.Words));
        return ExitCode.Fine;
    });

    /// <summary>Shows one piece.</summary>
    public int Run(Request.GearShow request) => _room.Use(request, makes: false, async (library, stop) =>
    {
        if (_room.Find(await library.Cache.NowAsync(stop), request.Tag, request.Kind) is not { } gear)
            return ExitCode.Unreadable;
        return await ShowAsync(library, gear, request.Json, stop);
    });

    /// <summary>Shows a piece.</summary>
    public async Task<int> ShowAsync(OpenLibrary library, LibraryGear gear, bool json, CancellationToken stop)
    {
        var shown = await ShownGear.OfAsync(library.Store, library.Editor, gear, stop);
        if (json)
            GearJson.Write(around.Output, shown);
        else
            SheetPrinter.Print(around, sheet => GearPage.Write(sheet, shown));
        return ExitCode.Fine;
    }
}
