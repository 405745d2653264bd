using Loadmark.Answers;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Sources;
using Loadmark.Web.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear list</c> and <c>gear show</c>: what does the library know?</summary>
internal sealed class GearReadCommand(Surroundings around)
{
    /// <summary>How many of what is looked for are shown: the best.</summary>
    private const int MostFound = 50;

    private readonly LibraryRoom _room = new(around);

    /// <summary>Lists gear.</summary>
    public int Run(Request.GearList request) => _room.Use(request, makes: false, async (library, stop) =>
    {
        var now = await library.Shelf.NowAsync(stop);
        var uses = await library.Store.Gear.Uses.CountAsync(stop);
        var most = request.Words.Length == 0 ? int.MaxValue : MostFound;
        List<ListedGear> found = [.. now.Search(request.Words, most, request.Kind).Select(gear => new ListedGear(gear, ListedGear.RigsOf(gear, uses)))];
        if (request.Json)
            GearJson.WriteList(around.Output, found);
        else
            SheetPrinter.Print(around, sheet => GearListPage.Write(sheet, found, request.Words));
        return ExitCode.Fine;
    });

    /// <summary>Shows one piece.</summary>
    public int Run(Request.GearShow request) => _room.Use(request, makes: false, async (library, stop) =>
    {
        if (_room.Find(await library.Shelf.NowAsync(stop), request.Tag, request.Kind) is not { } gear)
            return ExitCode.Unreadable;
        return await ShowAsync(library, gear, request.Json, stop);
    });

    /// <summary>Shows a piece.</summary>
    public async Task<int> ShowAsync(OpenLibrary library, ShelfGear gear, bool json, CancellationToken stop)
    {
        var shown = await ShownGear.OfAsync(library.Store, library.Keeper, gear, stop);
        if (json)
            GearJson.Write(around.Output, shown);
        else
            SheetPrinter.Print(around, sheet => GearPage.Write(sheet, shown));
        return ExitCode.Fine;
    }
}
