using Loadmark.Answers;
using Loadmark.Core.Gear;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear measure</c>: adds what a meter showed of a load.</summary>
internal sealed class GearMeasureCommand(Surroundings around)
{
    private readonly LibraryRoom _room = new(around);
    private readonly Complaints _complaints = new(around);

    /// <summary>Adds the readings, and makes what all of them come to the library's figure.</summary>
    public int Run(Request.GearMeasure request)
    {
        if (TypedReadings.Read(request.Run, request.Start, request.Meter, request.Note, around.Time.GetUtcNow(), out var complaint) is not { } readings)
            return _complaints.Unusable(complaint!);
        return _room.Use(request, makes: false, async (library, stop) =>
        {
            if (_room.Find(await library.Cache.NowAsync(stop), request.Tag, GearKind.Load) is not { } gear)
                return ExitCode.Unreadable;
            var measured = (Figures: new MeasuredFigures([], null, null), Outcome: new GearOutcome(GearState.Gone, null));
            foreach (var reading in readings)
                measured = await library.Editor.MeasureAsync(gear.Id, reading, stop);
            if (measured.Outcome.Gear is not { } after || measured.Outcome.State != GearState.Saved)
                return _complaints.Unusable($"the reading of {gear.Tag} is kept, but its figure could not be changed: somebody else is changing it. Measure again.");
            if (request.Json)
                GearJson.Write(around.Output, after, measured.Figures);
            else
                SheetPrinter.Print(around, sheet => MeasuredBlock.Write(sheet, after.Content.Tag, measured.Figures));
            return ExitCode.Fine;
        });
    }
}
