using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Gear;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear measure</c>: adds what a meter showed of a load.</summary>
internal sealed class GearMeasureCommand(CommandInput input)
{
    private static readonly OptionSpec Running = new(
        "run", OptionKind.Text, "The running current, such as \"212 mA\".")
    { Placeholder = "CURRENT" };
    private static readonly OptionSpec Starting = new(
        "start", OptionKind.Text, "The starting current and for how long, such as \"520 mA for 1.5 s\".")
    {
        Placeholder = "CURRENT",
    };

    private static readonly OptionSpec Meter = new(
        "meter", OptionKind.Text, "The accuracy of the meter, such as \"1 % + 2 mA\".")
    { Placeholder = "ACCURACY" };
    private static readonly OptionSpec Note = new("note", OptionKind.Text, "What there is to say of the reading.") { Placeholder = "TEXT" };

    private readonly LibrarySession _session = new(input);

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = "adds what a meter showed of a load; the figure is made of all readings",
        Parameters = [new("TAG", "The tag of the load.")],
        Options = [Running, Starting, Meter, Note],
        Needs = "one tag, and what the meter showed after --run or --start",
        IsOnStore = true,
        Json = "One object: the load, and the figures that its readings come to.",
        Example = "loadmark gear measure delay-2 --run \"212 mA\"",
        Run = static input => new GearMeasureCommand(input).Run(),
    };

    /// <summary>Adds the readings, and makes what all of them come to the library's figure.</summary>
    private int Run()
    {
        if (input.Words is not [var tag] || !(input.Has(Running) || input.Has(Starting)))
            return input.Refuse();
        var readings = TypedReadings.Read(
            input.Text(Running), input.Text(Starting), input.Text(Meter), input.Text(Note), input.Process.Time.GetUtcNow(),
            out var complaint);
        if (readings is null)
            return input.Complaints.Unusable(complaint!);
        return _session.Use(makes: false, async (library, stop) =>
        {
            if (_session.Find(await library.Cache.NowAsync(stop), tag, GearKind.Load) is not { } gear)
                return ExitCode.Unreadable;
            var measured = (Figures: new LoadMeasurements([], null, null), Outcome: new GearOutcome(GearState.Gone, null));
            foreach (var reading in readings)
                measured = await library.Editor.MeasureAsync(gear.Id, reading, stop);
            if (measured.Outcome.Gear is not { } after || measured.Outcome.State != GearState.Saved)
                return input.Complaints.Unusable($"the reading of {gear.Tag} is kept, but its figure could not be changed: "
                    + "somebody else is changing it. Measure again.");
            if (input.Json)
                GearJson.Write(input.Process.Output, after, measured.Figures);
            else
                SheetPrinter.Print(input.Process, sheet => MeasuredBlock.Write(sheet, after.Content.Tag, measured.Figures));
            return ExitCode.Fine;
        });
    }
}
