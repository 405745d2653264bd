using Loadmark.Core.Gear;
using Loadmark.Storage.Gear;

namespace Loadmark.Storage.Tests;

/// <summary>Which rig has which gear, through every change of a rig.</summary>
public sealed class GearUsesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly CancellationToken _token = TestContext.Current.CancellationToken;
    private int _read;

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Each_save_undo_and_redo_brings_the_list_up_to_date()
    {
        using var store = await OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "drive-3 delay-2", _token);
        await AssertAsync(store, "DRIVE-3", "rig");
        rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "delay-2 chorus-1", "edit", _token)).Rig!;
        await AssertAsync(store, "drive-3");
        await AssertAsync(store, "chorus-1", "rig");
        await AssertAsync(store, "delay-2", "rig");
        rig = (await store.Rigs.UndoAsync(rig.Id, rig.Revision, _token)).Rig!;
        await AssertAsync(store, "drive-3", "rig");
        await AssertAsync(store, "chorus-1");
        rig = (await store.Rigs.RedoAsync(rig.Id, rig.Revision, _token)).Rig!;
        await AssertAsync(store, "chorus-1", "rig");

        // What cannot be read says nothing, and what was known stays.
        rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, "rig", "?", "edit", _token)).Rig!;
        await AssertAsync(store, "chorus-1", "rig");
        await store.Rigs.RemoveAsync(rig.Id, rig.Revision, _token);
        await AssertAsync(store, "chorus-1");
        Assert.Empty(await store.Gear.Uses.CountAsync(_token));
        await store.Rigs.RestoreAsync(rig.Id, _token);
        await AssertAsync(store, "chorus-1", "rig");
        Assert.Equal([((GearKind.Load, "CHORUS-1"), 1), ((GearKind.Load, "DELAY-2"), 1)], (await store.Gear.Uses.CountAsync(_token)).Select(pair => (pair.Key, pair.Value)).Order());

        // All of it at the saves: none was read again for an answer.
        Assert.Equal(5, _read);
    }

    [Fact]
    public async Task Rigs_that_an_older_program_saved_are_read_before_an_answer()
    {
        using (var old = await _folder.OpenAsync())
        {
            for (var number = 0; number < 250; number++)
                await old.Rigs.AddAsync($"rig {number}", number % 2 == 0 ? "delay-2" : "drive-3", _token);
            Assert.Empty(await old.Gear.Uses.RigsWithAsync(GearKind.Load, "delay-2", _token));
        }

        using var store = await OpenAsync();
        Assert.Equal(125, (await store.Gear.Uses.RigsWithAsync(GearKind.Load, "delay-2", _token)).Length);
        Assert.Equal(250, _read);
        Assert.Equal(125, (await store.Gear.Uses.RigsWithAsync(GearKind.Load, "drive-3", _token)).Length);
        Assert.Equal(250, _read);
    }

    [Fact]
    public async Task A_decision_lasts_until_the_gear_changes_again()
    {
        using var store = await OpenAsync();
        var rig = await store.Rigs.AddAsync("rig", "delay-2", _token);
        var gear = (await store.Gear.AddAsync(new GearContent { Kind = GearKind.Load, Tag = "delay-2", Text = "" }, "typed in", _token)).Gear!;
        Assert.Empty(await store.Gear.Uses.DecisionsAsync(gear.Id, 1, _token));
        Assert.True(await store.Gear.Uses.DecideAsync(rig.Id, gear.Id, 1, takesNew: false, _token));
        Assert.Equal([new(rig.Id, false)], await store.Gear.Uses.DecisionsAsync(gear.Id, 1, _token));
        Assert.Empty(await store.Gear.Uses.DecisionsAsync(gear.Id, 2, _token));
        Assert.True(await store.Gear.Uses.DecideAsync(rig.Id, gear.Id, 2, takesNew: true, _token));
        Assert.Equal([new(rig.Id, true)], await store.Gear.Uses.DecisionsAsync(gear.Id, 2, _token));
        Assert.False(await store.Gear.Uses.DecideAsync(Guid.Empty, gear.Id, 2, takesNew: true, _token));
    }

    private async Task<Store> OpenAsync()
    {
        var store = new Store(_folder.Path, TimeProvider.System, Mentions);
        Assert.Null((await store.OpenAsync(_token)).Trouble);
        return store;
    }

    private List<GearMention>? Mentions(string text)
    {
        _read++;
        return text == "?" ? null : [.. text.Split(' ').Select(tag => new GearMention(GearKind.Load, tag))];
    }

    private async Task AssertAsync(Store store, string tag, params string[] rigs) =>
        Assert.Equal(rigs, (await store.Gear.Uses.RigsWithAsync(GearKind.Load, tag, _token)).Select(use => use.Rig.Name));
}
