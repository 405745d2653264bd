using Loadmark.Answers;
using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Files.Forms;
using Loadmark.Hosting;
using Loadmark.Sheets;
using Loadmark.Storage.Gear;
using Loadmark.Web.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear measure</c>: adds what a meter showed of a load.</summary>
internal sealed class GearMeasureCommand(Surroundings around)
{
    private readonly LibraryRoom _room = new(around);
    private readonly Complaints _complaints = new(around);

    /// <summary>Adds the readings, and makes what all of them come to the library's figure.</summary>
    public int Run(Request.GearMeasure request)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal) { ["run"] = request.Run ?? "", ["start"] = request.Start ?? "" };
        var typed = GearForm.ReadLoad("typed", values);
        if (typed.Value is not { } load)
            return _complaints.Unusable($"--{typed.Faults.First().Value}");
        MeterAccuracy? meter = null;
        if (request.Meter is { } accuracy)
        {
            if (!MeterAccuracyReader.TryRead(accuracy, out var read, out var problem))
                return _complaints.Unusable($"--meter: expected the meter's accuracy, such as \"1 % + 2 mA\", found \"{accuracy}\"; {problem}");
            meter = read;
        }

        var now = around.Time.GetUtcNow();
        var readings = new List<DrawReading>();
        if (load.Run is { } run)
            readings.Add(new DrawReading { Kind = DrawKind.Running, Current = run, Meter = meter, Taken = now, Note = request.Note });
        if (load.Start is { } start)
            readings.Add(new DrawReading { Kind = DrawKind.Starting, Current = start.Current, Duration = start.Duration, Meter = meter, Taken = now, Note = request.Note });

        return _room.Use(request, makes: false, async (library, stop) =>
        {
            if (_room.Find(await library.Shelf.NowAsync(stop), request.Tag, GearKind.Load) is not { } gear)
                return ExitCode.Unreadable;
            var measured = (Figures: new MeasuredFigures([], null, null), Outcome: new GearOutcome(GearState.Gone, null));
            foreach (var reading in readings)
                measured = await library.Keeper.MeasureAsync(gear.Id, reading, stop);
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
