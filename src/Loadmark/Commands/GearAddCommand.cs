using Loadmark.Answers;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Loadmark.Hosting;
using Loadmark.Sources;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear add</c>: puts gear into the library.</summary>
internal sealed class GearAddCommand(Surroundings around, IRigSource source)
{
    private readonly LibraryRoom _room = new(around);
    private readonly Complaints _complaints = new(around);

    /// <summary>Adds one piece, or what a rig has.</summary>
    public int Run(Request.GearAdd request) => request.From is { } path ? AddFromRig(request, path) : AddOne(request);

    private int AddOne(Request.GearAdd request)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal) { ["label"] = request.Label!, ["name"] = request.Name ?? "" };
        var (piece, fault) = PieceOf(request.Kind ?? GearKind.Load, request.Tag!, values);
        if (piece is null)
            return _complaints.Unusable(fault!);
        return _room.Use(request, makes: true, async (library, stop) =>
        {
            ValueList<string> words = [.. request.Words.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Distinct(StringComparer.OrdinalIgnoreCase)];
            var outcome = await library.Editor.AddAsync(piece, words, "typed in", stop);
            if (outcome.State == GearState.TagTaken)
                return _complaints.Unusable($"the library has a {JsonWords.Of(piece.Kind)} with the tag {outcome.Gear!.Content.Tag} already. Nothing was changed. See: loadmark gear show {outcome.Gear.Content.Tag}");
            return await new GearReadCommand(around).ShowAsync(library, new LibraryGear(outcome.Gear!), request.Json, stop);
        });
    }

    private int AddFromRig(Request.GearAdd request, string path)
    {
        var reading = source.Read(path);
        if (reading.Rig is not { } rig)
            return _complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], request.Json);
        return _room.Use(request, makes: true, async (library, stop) =>
        {
            var preview = ImportPreview.Of(await library.Cache.NowAsync(stop), rig);
            if (request.Kind is { } kind)
                preview = new ImportPreview([.. preview.Rows.Where(row => row.Kind == kind)]);
            return await new GearFileCommand(around).TakeAsync(
                library, preview, new TakenTags(request.Take, request.TakeAll), $"from the rig {rig.Name}", [], request.Json, stop);
        });
    }

    private static (GearPiece? Piece, string? Fault) PieceOf(GearKind kind, string tag, Dictionary<string, string> values)
    {
        switch (kind)
        {
            case GearKind.Load:
                var load = GearForm.ReadLoad(tag, values);
                return (load.Value is null ? null : GearPiece.Of(load.Value), load.Faults.Values.FirstOrDefault());
            case GearKind.Supply:
                var supply = GearForm.ReadSupply(tag, values);
                return (supply.Value is null ? null : GearPiece.Of(supply.Value), supply.Faults.Values.FirstOrDefault());
            default:
                return (null, "a lead has no label; put leads into a file and use: loadmark gear import FILE");
        }
    }
}
