using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;

namespace Loadmark.Workshop.Tests.Library;

/// <summary>Gear into the library and out of it: nothing merged in silence, and figures that say how they came about.</summary>
public sealed class LibraryEditorTests : GearTest
{
    private static readonly DateTimeOffset Noon = new(2026, 11, 26, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task What_differs_is_shown_field_by_field_and_taken_only_when_somebody_says_so()
    {
        await KeepAsync("loads: { delay-2: { name: Delay, run: 210 mA, isolate: yes, words: [pit] }, drive-3: { run: 12 mA } }");
        var file = GearFileReader.Read("loads: { DELAY-2: { run: 220 mA, kind: digital, words: [pit, spare] }, drive-3: { run: 12 mA }, tuner-4: { run: 25 mA }, XX: { run: lots } }", "gear.yaml");
        var preview = ImportPreview.Of(await Cache.NowAsync(Stop), file);
        Assert.Equal([ImportState.Differs, ImportState.Same, ImportState.New, ImportState.Refused], preview.Rows.Select(row => row.State));
        Assert.Equal(
            [new GearDifference("kind", null, "digital"), new GearDifference("run", "210 mA", "220 mA"), new GearDifference("words", "pit", "pit, spare")],
            preview.Rows[0].Differences.OrderBy(one => one.Key, StringComparer.Ordinal));

        var result = await Editor.TakeAsync(preview, _ => false, "test", Stop);
        Assert.Equal((1, 0, 1, 0), (result.Added.Length, result.Changed.Length, result.Left.Length, result.Overtaken.Length));
        Assert.Equal("210 mA", $"{(await Cache.NowAsync(Stop)).FindLoad("delay-2")!.Run}");

        // The piece keeps its own tag, and what the file says nothing of.
        result = await Editor.TakeAsync(ImportPreview.Of(await Cache.NowAsync(Stop), file), row => row.Tag == "DELAY-2", "test", Stop);
        Assert.Equal((0, 1, 0), (result.Added.Length, result.Changed.Length, result.Left.Length));
        var load = (await Cache.NowAsync(Stop)).FindLoad("DELAY-2")!;
        Assert.Equal(("delay-2", "Delay", "220 mA", true, "digital"), (load.Id, load.Name, $"{load.Run}", load.Isolate, load.Kind!.Text));
    }

    [Fact]
    public async Task What_somebody_else_changed_meanwhile_is_not_taken()
    {
        var gear = await KeepAsync("loads: { delay-2: { run: 210 mA } }");
        var preview = ImportPreview.Of(await Cache.NowAsync(Stop), GearFileReader.Read("loads: { delay-2: { run: 220 mA }, NEW: { run: 1 mA } }", "gear.yaml"));
        await Editor.ChangeAsync(gear.Stored, GearPiece.Of(gear.Piece!.Load! with { Run = new Amps(0.3m) }), [], "theirs", Stop);
        await KeepAsync("loads: { new: { run: 2 mA } }");
        var result = await Editor.TakeAsync(preview, _ => true, "test", Stop);
        Assert.Equal(["NEW", "delay-2"], result.Overtaken.Select(row => row.Tag).Order(StringComparer.Ordinal));
        Assert.Equal("300 mA", $"{(await Cache.NowAsync(Stop)).FindLoad("delay-2")!.Run}");
    }

    [Fact]
    public async Task The_figure_is_made_of_the_readings_and_the_list_of_changes_says_how()
    {
        var gear = await KeepAsync("loads: { delay-2: { name: Delay, label: 9V 300mA } }");
        var meter = new MeterAccuracy(0.01m, new Amps(0.002m));
        foreach (var amps in (decimal[])[0.208m, 0.212m, 0.211m, 0.209m, 2.1m])
            await Editor.MeasureAsync(gear.Id, new DrawReading { Current = new Amps(amps), Meter = meter, Taken = Noon }, Stop);
        var (figures, outcome) = await Editor.MeasureAsync(gear.Id, new DrawReading { Kind = DrawKind.Starting, Current = new Amps(0.52m), Duration = new Seconds(1.5m), Taken = Noon }, Stop);
        var load = new LibraryGear(outcome.Gear!).Piece!.Load!;
        Assert.Equal(("210 mA", "520 mA for 1.5 s", "Delay"), ($"{load.Run}", $"{load.Start}", load.Name));
        Assert.Equal([4], figures.Running!.LeftOut);

        // Struck out, the outlier no longer counts, and is kept.
        var wrong = figures.Readings.Single(one => one.Reading.Current.Value == 2.1m);
        (figures, outcome) = await Editor.StrikeOutAsync(gear.Id, wrong.Id, isStruckOut: true, Stop);
        Assert.Equal((4, 0, 6), (figures.Running!.Count, figures.Running.LeftOut.Count, figures.Readings.Length));
        var changes = await Store.Gear.HistoryAsync(gear.Id, Stop);
        Assert.Contains(changes, change => change.What.StartsWith("run 210 mA: mean of 4 readings; 1 left out", StringComparison.Ordinal));
        Assert.Equal(GearState.Gone, (await Editor.MeasureAsync(Guid.NewGuid(), new DrawReading { Current = new Amps(1), Taken = Noon }, Stop)).Outcome.State);
        var lead = await KeepAsync("leads: { chain: { type: daisy chain } }");
        await Assert.ThrowsAsync<ArgumentException>(() => Editor.MeasureAsync(lead.Id, new DrawReading { Current = new Amps(1), Taken = Noon }, Stop));
    }

    [Fact]
    public async Task The_shelf_follows_what_any_program_changes()
    {
        var gear = await KeepAsync("loads: { delay-2: { name: Delay with the long tail, label: 9V 300mA }, drive-3: { name: Overdrive } }");
        var before = await Cache.NowAsync(Stop);
        Assert.Same(before, await Cache.NowAsync(Stop));
        Assert.Equal([(GearKind.Load, "delay-2")], TagsOf(before.Search("dealy", 10)));

        using var other = new LibraryCache(Store);
        await Store.Gear.RemoveAsync(gear.Id, gear.Stored.Revision, Stop);
        var after = await Cache.NowAsync(Stop);
        Assert.Empty(after.Search("dealy", 10));
        Assert.Null(after.FindLoad("delay-2"));
        Assert.NotNull(before.FindLoad("delay-2"));
        Assert.Equal(after.Gear.Select(one => one.Tag), (await other.NowAsync(Stop)).Gear.Select(one => one.Tag));
        Assert.Equal(["drive-3"], after.Near(GearKind.Load, "drive-30"));
        await Store.Gear.RestoreAsync(gear.Id, Stop);
        Assert.NotNull((await Cache.NowAsync(Stop)).FindLoad("delay-2"));
    }

    [Fact]
    public async Task Gear_goes_into_a_rig_copied_or_taken_and_feeds_stay()
    {
        var gear = await KeepAsync("loads: { delay-2: { name: Delay, run: 210 mA } }");
        var library = await Cache.NowAsync(Stop);
        const string Text = "rig: a\nloads:\n  DELAY-2: { run: 1 A } # mine\nsupplies: { b: { outlets: { 1: 9 V 1 A } } }\nwired: [{ from: b/1, to: DELAY-2 }]\n";
        var rig = RigFileReader.Read(Text, "", library).Rig!;
        var taken = RigFileEditor.Update(Text, GearUse.Put(rig, gear.Piece!, fromLibrary: true)).Text;
        Assert.Equal(Text.Replace("{ run: 1 A }", "{ from: library }", StringComparison.Ordinal), taken);
        var copied = RigFileEditor.Update(Text, GearUse.Put(rig, gear.Piece!, fromLibrary: false)).Text;
        Assert.Equal(Text.Replace("{ run: 1 A }", "{ name: Delay, run: 210 mA }", StringComparison.Ordinal), copied);
        Assert.Equal(2, GearUse.Put(rig, (await KeepAsync("leads: { chain: { type: daisy chain } }")).Piece!, fromLibrary: true).Leads.Count + rig.Loads.Count);
    }
}
