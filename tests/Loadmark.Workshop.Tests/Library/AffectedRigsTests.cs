using Loadmark.Core.Checks;
using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Storage;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Tests.Library;

/// <summary>A figure has changed: which rigs that means something to, and what becomes of them.</summary>
public sealed class AffectedRigsTests : GearTest
{
    private const string Delay = "loads: { delay-2: { name: Delay with the long tail, kind: digital, label: 9V 300mA, run: 210 mA } }";

    private const string Copied = """
        rig: Copied
        loads:
          delay-2: { kind: digital, label: 9V 300mA, run: 210 mA, priority: 1 }   # the long one
        supplies:
          brick: { isolated: true, outlets: { 1: 9 V 250 mA } }
        wired: [{ from: brick/1, to: delay-2 }]
        """;

    private const string Taken = """
        rig: Taken
        loads:
          DELAY-2: { from: library }   # the long one
        supplies:
          brick: { isolated: true, outlets: { 1: 9 V 250 mA } }
        wired: [{ from: brick/1, to: DELAY-2 }]
        """;

    [Fact]
    public async Task Shows_each_rig_with_its_verdict_before_and_after_and_leaves_others_out()
    {
        await KeepAsync(Delay);
        await KeepRigAsync(Copied);
        await KeepRigAsync(Taken);
        await KeepRigAsync("rig: Its own\nloads: { delay-2: { from: library, run: 200 mA } }");
        await KeepRigAsync("rig: Without\nloads: { drive-3: { label: 9V 12mA } }");
        var gear = await KeepAsync(Delay.Replace("210", "400", StringComparison.Ordinal));

        var rigs = await AffectedByAsync(gear);
        Assert.Equal(["Copied", "Taken"], rigs.Select(rig => rig.Rig.Name));
        Assert.Equal([false, true], rigs.Select(rig => rig.TakesFromLibrary));
        Assert.All(rigs, rig =>
        {
            Assert.Equal([new GearDifference("run", "210 mA", "400 mA")], rig.Differences);
            Assert.True(rig.Before!.Verdict < Severity.Fails, $"{rig.Before.Verdict}");
            Assert.Equal(Severity.Fails, rig.After!.Verdict);
            Assert.Contains(rig.After.Findings.Items, finding => finding.Rule == "outlet-overload");
        });
    }

    /// <summary>The tag alone does not tell that two things are one: people begin every rig with the same ones.</summary>
    [Theory]
    [InlineData("label: 9V 300mA", false)]
    [InlineData("label: \"9 V ⎓ 300 mA\"", false)]
    [InlineData("label: 9V 250mA", false)]
    [InlineData("name: delay with the long tail, label: 9V 30mA", false)]
    [InlineData("label: 9V 30mA", true)]
    [InlineData("run: 30 mA", true)]
    [InlineData("kind: analog drive, label: 9V 300mA", true)]
    public async Task Gear_of_the_tag_that_may_be_another_piece_is_asked_about(string own, bool isInDoubt)
    {
        // The library's label was 250 mA before it was 300 mA: a rig that still says so has the same piece.
        await KeepAsync(Delay.Replace("300", "250", StringComparison.Ordinal));
        await KeepRigAsync($"rig: Own\nloads: {{ delay-2: {{ {own} }} }}");
        var gear = await KeepAsync(Delay);

        Assert.Equal(isInDoubt, Assert.Single(await AffectedByAsync(gear)).IsInDoubt);
    }

    [Fact]
    public async Task Taking_the_new_figure_changes_that_alone_and_the_rig_is_not_shown_again()
    {
        await KeepAsync(Delay);
        await KeepRigAsync(Copied);
        await KeepRigAsync(Taken);
        var gear = await KeepAsync(Delay.Replace("210", "220", StringComparison.Ordinal));
        foreach (var rig in await AffectedByAsync(gear))
        {
            Assert.Equal(SaveState.Saved, await Affected.TakeNewAsync(rig, gear, Stop));
            Assert.Equal((rig.TakesFromLibrary ? Taken : Copied).Replace("210", "220", StringComparison.Ordinal), await TextOfAsync(rig));
        }

        Assert.Empty(await AffectedByAsync(gear));
    }

    [Fact]
    public async Task Keeping_the_old_figure_writes_it_where_it_came_from_the_library_and_asks_again_only_after_another_change()
    {
        await KeepAsync(Delay);
        await KeepRigAsync(Copied);
        await KeepRigAsync(Taken);
        var gear = await KeepAsync(Delay.Replace("210", "220", StringComparison.Ordinal));
        var rigs = await AffectedByAsync(gear);
        foreach (var rig in rigs)
            Assert.Equal(SaveState.Saved, await Affected.KeepOldAsync(rig, gear, Stop));
        Assert.Equal(Copied, await TextOfAsync(rigs[0]));
        Assert.Equal(Taken.Replace("{ from: library }", "{ from: library, run: 210 mA }", StringComparison.Ordinal), await TextOfAsync(rigs[1]));
        Assert.Empty(await AffectedByAsync(gear));
        var read = RigFileReader.Read(await TextOfAsync(rigs[1]), "", await Cache.NowAsync(Stop)).Rig!;
        Assert.Equal("210 mA", $"{read.Loads[0].Run}");

        // The one that has a figure of its own is not asked again; the one with a copy is.
        gear = await KeepAsync(Delay.Replace("210", "230", StringComparison.Ordinal));
        Assert.Equal(["Copied"], (await AffectedByAsync(gear)).Select(rig => rig.Rig.Name));
    }

    [Fact]
    public async Task A_rig_that_was_changed_meanwhile_or_is_gone_is_told()
    {
        await KeepAsync(Delay);
        var kept = await KeepRigAsync(Copied);
        var gear = await KeepAsync(Delay.Replace("210", "220", StringComparison.Ordinal));
        var rig = Assert.Single(await AffectedByAsync(gear));
        kept = (await Store.Rigs.SaveAsync(kept.Id, kept.Revision, "Copied", Copied + "\n# mine\n", "comment", Stop)).Rig!;
        Assert.Equal(SaveState.Conflict, await Affected.TakeNewAsync(rig, gear, Stop));
        await Store.Rigs.RemoveAsync(kept.Id, kept.Revision, Stop);
        Assert.Equal(SaveState.Gone, await Affected.TakeNewAsync(rig, gear, Stop));
        Assert.Empty(await AffectedByAsync(gear));
    }

    [Fact]
    public async Task A_rig_that_cannot_be_read_says_why()
    {
        var gear = await KeepAsync(Delay);
        await KeepRigAsync("rig: Odd\nloads: { delay-2: { run: lots } }");
        var rig = Assert.Single(await AffectedByAsync(gear));
        Assert.Null(rig.After);
        Assert.StartsWith("the rig cannot be read: line 2: run: expected a current", rig.Problem, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Supplies_and_leads_are_gear_too()
    {
        await KeepAsync("supplies: { brick: { isolated: true, outlets: { 1: 9 V 250 mA } } }");
        await KeepAsync("leads: { chain: { type: daisy chain, plugs: 5 } }");
        await KeepRigAsync(Copied + "\nleads: { chain: { type: daisy chain, plugs: 5 } }");
        await KeepRigAsync(Copied.Replace("{ isolated: true, outlets: { 1: 9 V 250 mA } }", "{ from: library }", StringComparison.Ordinal));
        var supply = await KeepAsync("supplies: { brick: { isolated: true, outlets: { 1: 9 V 100 mA } } }");
        var lead = await KeepAsync("leads: { chain: { type: daisy chain, plugs: 4 } }");
        var rigs = await AffectedByAsync(supply);
        Assert.Equal(2, rigs.Count);
        Assert.All(rigs, rig => Assert.Equal([new GearDifference("outlet 1", "9 V 250 mA", "9 V 100 mA")], rig.Differences));
        Assert.All(rigs, rig => Assert.Equal(Severity.Fails, rig.After!.Verdict));
        Assert.Equal([new GearDifference("plugs", "5", "4")], Assert.Single(await AffectedByAsync(lead)).Differences);
    }

    [Fact]
    public async Task Looking_can_be_given_up()
    {
        await KeepAsync(Delay);
        for (var number = 0; number < 20; number++)
            await KeepRigAsync(Copied);
        var gear = await KeepAsync(Delay.Replace("210", "220", StringComparison.Ordinal));
        await foreach (var _ in Affected.FindAsync(gear, Stop))
            break;
        using var given = new CancellationTokenSource();
        await given.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(async () =>
        {
            await foreach (var _ in Affected.FindAsync(gear, given.Token))
                Assert.Fail("given up before");
        });
    }
}
