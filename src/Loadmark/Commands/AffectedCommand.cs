using Loadmark.Answers;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Workshop.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark rigs affected</c>: a figure of a piece of gear changed; what does that mean to the rigs that have it?</summary>
internal sealed class AffectedCommand(Surroundings around)
{
    private readonly LibraryRoom _room = new(around);

    /// <summary>Finds the rigs and answers; 1 where one of them fails or does harm with the library's figures.</summary>
    public int Run(Request.RigsAffected request) => _room.Use(request, makes: false, async (library, stop) =>
    {
        if (_room.Find(await library.Cache.NowAsync(stop), request.Tag, request.Kind) is not { } gear)
            return ExitCode.Unreadable;
        var ordered = await AffectedInOrder.FindAsync(new AffectedRigs(library.Store, library.Cache), gear, new AffectedOptions(), stop);
        if (request.Json)
            RigsJson.Write(around.Output, gear, ordered);
        else
            SheetPrinter.Print(around, sheet => AffectedPage.Write(sheet, gear, ordered));
        return ordered.Exists(static rig => rig.After?.IsRefused == true) ? ExitCode.Refused : ExitCode.Fine;
    });
}
