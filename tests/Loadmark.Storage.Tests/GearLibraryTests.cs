using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Storage.Gear;

namespace Loadmark.Storage.Tests;

/// <summary>The gear library: what is said of gear, every change of it, and who has it.</summary>
public sealed class GearLibraryTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Every_change_is_kept_with_what_was_before_and_after()
    {
        var clock = new FixedClock(new DateTimeOffset(2026, 11, 26, 10, 0, 0, TimeSpan.Zero));
        using (var store = await _folder.OpenAsync(clock))
        {
            var gear = (await store.Gear.AddAsync(Content("delay-2", "run: 210 mA\n"), "typed in", _token)).Gear!;
            gear = (await store.Gear.SaveAsync(gear.Id, gear.Revision, gear.Content with { Text = "run: 240 mA\n", Words = ["pit", "spare"] }, "measured again", _token)).Gear!;
            gear = (await store.Gear.SaveAsync(gear.Id, gear.Revision, gear.Content, "nothing", _token)).Gear!;
            Assert.Equal(2, gear.Revision);
            Assert.Equal(GearState.Saved, (await store.Gear.RemoveAsync(gear.Id, gear.Revision, _token)).State);
        }

        using var again = await _folder.OpenAsync();
        Assert.Null(await again.Gear.FindAsync(GearKind.Load, "delay-2", _token));
        var news = await again.Gear.NewsAsync(0, _token);
        var kept = Assert.Single(news.Gear);
        Assert.True(kept.IsRemoved);
        var before = Content("delay-2", "run: 210 mA\n");
        var after = before with { Text = "run: 240 mA\n", Words = ["pit", "spare"] };
        Assert.Equal(
            [
                new GearChange(1, "typed in", clock.GetUtcNow(), null, before),
                new GearChange(2, "measured again", clock.GetUtcNow(), before, after),
                new GearChange(3, "removed", clock.GetUtcNow(), after, null),
            ],
            await again.Gear.HistoryAsync(kept.Id, _token));

        var back = (await again.Gear.RestoreAsync(kept.Id, _token)).Gear!;
        Assert.Equal((after, 4), (back.Content, back.Revision));
        back = (await again.Gear.PutBackAsync(back.Id, back.Revision, 1, _token)).Gear!;
        Assert.Equal((before, 5), (back.Content, back.Revision));
        Assert.Equal([back], (await again.Gear.NewsAsync(news.Stamp, _token)).Gear);
        Assert.Empty((await again.Gear.NewsAsync(await again.Gear.StampAsync(_token), _token)).Gear);
    }

    [Fact]
    public async Task A_tag_is_one_s_own_capitals_aside_and_is_kept_as_typed()
    {
        using var store = await _folder.OpenAsync();
        var first = (await store.Gear.AddAsync(Content("Delay-2", ""), "typed in", _token)).Gear!;
        Assert.Equal("Delay-2", (await store.Gear.FindAsync(GearKind.Load, "dElay-2 ", _token))!.Content.Tag);
        Assert.Equal(new GearOutcome(GearState.TagTaken, first), await store.Gear.AddAsync(Content("delay-2", ""), "typed in", _token));

        // Of another kind it is another thing.
        Assert.Equal(GearState.Saved, (await store.Gear.AddAsync(Content("delay-2", "") with { Kind = GearKind.Lead }, "typed in", _token)).State);

        // In capitals only: the same piece.
        first = (await store.Gear.SaveAsync(first.Id, first.Revision, first.Content with { Tag = "delay-2" }, "capitals", _token)).Gear!;
        Assert.Equal("delay-2", first.Content.Tag);

        // A removed piece gives its tag away, and does not come back while another has it.
        await store.Gear.RemoveAsync(first.Id, first.Revision, _token);
        var second = (await store.Gear.AddAsync(Content("DELAY-2", "run: 1 A\n"), "another", _token)).Gear!;
        Assert.Equal(new GearOutcome(GearState.TagTaken, second), await store.Gear.RestoreAsync(first.Id, _token));
        Assert.Equal(second, await store.Gear.FindAsync(GearKind.Load, "delay-2", _token));
        Assert.True((await store.Gear.FindAsync(first.Id, _token))!.IsRemoved);
    }

    [Fact]
    public async Task Of_two_who_change_a_piece_the_second_is_told_and_shown_the_other_s()
    {
        using var mine = await _folder.OpenAsync();
        using var theirs = await _folder.OpenAsync();
        var gear = (await mine.Gear.AddAsync(Content("delay-2", "run: 210 mA\n"), "typed in", _token)).Gear!;
        var changed = await theirs.Gear.SaveAsync(gear.Id, 1, gear.Content with { Name = "Theirs" }, "name", _token);
        Assert.Equal(GearState.Saved, changed.State);
        Assert.Equal(new GearOutcome(GearState.Conflict, changed.Gear), await mine.Gear.SaveAsync(gear.Id, 1, gear.Content with { Name = "Mine" }, "name", _token));
        Assert.Equal(new GearOutcome(GearState.Conflict, changed.Gear), await mine.Gear.RemoveAsync(gear.Id, 1, _token));
        Assert.Equal(new GearOutcome(GearState.Conflict, changed.Gear), await mine.Gear.PutBackAsync(gear.Id, 1, 1, _token));
        Assert.Equal(new GearOutcome(GearState.Gone, null), await mine.Gear.SaveAsync(Guid.Empty, 1, gear.Content, "name", _token));
    }

    [Fact]
    public async Task Several_changes_are_one_and_those_that_cannot_be_made_are_told()
    {
        using var store = await _folder.OpenAsync();
        var known = (await store.Gear.AddAsync(Content("drive-3", ""), "typed in", _token)).Gear!;
        List<GearStep> steps = [.. Enumerable.Range(0, 60).Select(number => new GearStep(null, 0, Content($"delay-{number:00}", ""), "imported"))];
        steps.Add(new GearStep(null, 0, Content("DELAY-07", "other"), "imported"));
        steps.Add(new GearStep(known.Id, 1, known.Content with { Tag = "drive-4" }, "renamed"));
        steps.Add(new GearStep(null, 0, Content("drive-3", "free again"), "imported"));
        steps.Add(new GearStep(known.Id, 1, known.Content, "too late"));
        var outcomes = await store.Gear.ApplyAsync(steps, _token);
        Assert.All(outcomes[..60], outcome => Assert.Equal(GearState.Saved, outcome.State));
        Assert.Equal([GearState.TagTaken, GearState.Saved, GearState.Saved, GearState.Conflict], outcomes[60..].Select(outcome => outcome.State));
        Assert.Equal(outcomes[7].Gear, outcomes[60].Gear);
        Assert.Equal(62, (await store.Gear.NewsAsync(0, _token)).Gear.Length);

        // Given up: none of it.
        using var given = new CancellationTokenSource();
        await given.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => store.Gear.ApplyAsync([new GearStep(null, 0, Content("extra-1", ""), "imported")], given.Token));
        Assert.Null(await store.Gear.FindAsync(GearKind.Load, "extra-1", _token));
    }

    [Fact]
    public async Task Readings_are_kept_to_the_digit_and_struck_out_rather_than_lost()
    {
        using var store = await _folder.OpenAsync();
        var gear = (await store.Gear.AddAsync(Content("delay-2", ""), "typed in", _token)).Gear!;
        var reading = new DrawReading
        {
            Kind = DrawKind.Starting,
            Current = new Amps(0.5203m),
            Duration = new Seconds(1.5m),
            Meter = new MeterAccuracy(0.012m, new Amps(0.002m)),
            Taken = new DateTimeOffset(2026, 11, 26, 9, 30, 0, TimeSpan.Zero),
            Note = "warm ⎓",
        };
        var plain = new DrawReading { Current = new Amps(0.21m), Taken = reading.Taken.AddMinutes(1) };
        var kept = await store.Gear.Readings.AddAsync(gear.Id, reading, _token);
        await store.Gear.Readings.AddAsync(gear.Id, plain, _token);
        Assert.Equal([reading, plain], (await store.Gear.Readings.ListAsync(gear.Id, _token)).Select(one => one.Reading));
        Assert.True((await store.Gear.Readings.StrikeOutAsync(kept!.Id, true, _token))!.IsStruckOut);
        Assert.Equal([true, false], (await store.Gear.Readings.ListAsync(gear.Id, _token)).Select(one => one.IsStruckOut));
        Assert.False((await store.Gear.Readings.StrikeOutAsync(kept.Id, false, _token))!.IsStruckOut);
        Assert.Null(await store.Gear.Readings.AddAsync(Guid.Empty, plain, _token));
        await Assert.ThrowsAsync<ArgumentException>(() => store.Gear.Readings.AddAsync(gear.Id, plain with { Current = new Amps(-1) }, _token));
    }

    [Fact]
    public async Task What_cannot_be_kept_is_the_caller_s_mistake()
    {
        using var store = await _folder.OpenAsync();
        foreach (var content in new[] { Content(" ", ""), Content("DL\0", ""), Content("delay-2", "") with { Words = ["two\nlines"] }, Content("delay-2", "") with { Name = "half \uD83C" }, Content("delay-2", new string('a', RigStore.LongestText + 1)) })
            await Assert.ThrowsAsync<ArgumentException>(() => store.Gear.AddAsync(content, "typed in", _token));
        var gear = (await store.Gear.AddAsync(Content("delay-2", ""), "typed in", _token)).Gear!;
        await Assert.ThrowsAsync<ArgumentException>(() => store.Gear.SaveAsync(gear.Id, 1, gear.Content with { Kind = GearKind.Supply }, "kind", _token));
    }

    private static GearContent Content(string tag, string text) => new() { Kind = GearKind.Load, Tag = tag, Name = "Delay with the long tail", Label = "9V⎓ 300mA", Text = text };
}
