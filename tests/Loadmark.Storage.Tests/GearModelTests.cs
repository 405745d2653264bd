using CsCheck;
using Loadmark.Core.Gear;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Tests.Model;

namespace Loadmark.Storage.Tests;

/// <summary>Whatever is done to gear, in whatever order: the library does as a list of changes in memory does.</summary>
public sealed class GearModelTests
{
    private enum What
    {
        Add,
        Save,
        SaveTheSame,
        Retag,
        Remove,
        Restore,
        TakeBack,
        Stale,
        Reopen,
    }

    private static readonly Gen<(What What, int Piece, int Tag, string Name, string Text)[]> Steps = Gen.Select(
        Gen.Frequency((4, What.Add), (6, What.Save), (1, What.SaveTheSame), (3, What.Retag), (3, What.Remove), (3, What.Restore), (4, What.TakeBack), (1, What.Stale), (1, What.Reopen)),
        Gen.Int[0, 5], Gen.Int[0, 3], Texts.Words, Texts.Any).Array[1, 40];

    [Fact]
    public Task Any_order_of_adding_changing_removing_and_taking_back() => Steps.SampleAsync(RunAsync, iter: Rounds.Of(60), threads: 2);

    private static async Task RunAsync((What What, int Piece, int Tag, string Name, string Text)[] steps)
    {
        var token = TestContext.Current.CancellationToken;
        using var folder = new TemporaryFolder();
        var store = await folder.OpenAsync();
        var model = new List<Piece>();
        try
        {
            foreach (var (what, which, tag, name, text) in steps)
            {
                var content = new GearContent { Kind = GearKind.Load, Tag = tag % 2 == 0 ? $"delay-{tag / 2}" : $"DELAY-{tag / 2}", Name = name, Words = ["pit"], Text = text };
                if (what == What.Reopen)
                {
                    store.Dispose();
                    store = await folder.OpenAsync();
                }
                else if (what == What.Add || model.Count == 0)
                {
                    var outcome = await store.Gear.AddAsync(content, "add", token);
                    if (Owner(model, content.Tag, null) is { } owner)
                        Assert.Equal((GearState.TagTaken, owner.Id), (outcome.State, outcome.Gear!.Id));
                    else
                        model.Add(new Piece(outcome.Gear!.Id, content));
                }
                else
                {
                    await TakeAsync(store, model, model[which % model.Count], what, content, token);
                }

                await CompareAsync(store, model, token);
            }
        }
        finally
        {
            store.Dispose();
        }
    }

    private static async Task TakeAsync(Store store, List<Piece> model, Piece piece, What what, GearContent content, CancellationToken token)
    {
        var (now, revision) = (piece.Now, (long)piece.Changes.Count);
        var wanted = what switch
        {
            What.Save => content with { Tag = piece.Last.Tag },
            What.SaveTheSame => piece.Last,
            What.Retag or What.Stale => content,
            What.Restore => piece.Last,
            What.TakeBack => piece.Changes.Count > 1 ? piece.Changes[^2] : now,
            _ => null,
        };
        var outcome = await (what switch
        {
            What.Remove => store.Gear.RemoveAsync(piece.Id, revision, token),
            What.Restore => store.Gear.RestoreAsync(piece.Id, token),
            What.TakeBack => store.Gear.PutBackAsync(piece.Id, revision, Math.Max(1, revision - 1), token),
            What.Stale => store.Gear.SaveAsync(piece.Id, revision - 1, content, "change", token),
            _ => store.Gear.SaveAsync(piece.Id, revision, wanted!, "change", token),
        });
        var mayBeRemoved = what is What.Restore or What.TakeBack;
        var expected = now is null && !mayBeRemoved ? GearState.Gone
            : what == What.Stale ? GearState.Conflict
            : wanted is not null && Owner(model, wanted.Tag, piece) is not null && !(what == What.Restore && now is not null) ? GearState.TagTaken
            : GearState.Saved;
        Assert.Equal(expected, outcome.State);
        if (expected != GearState.Saved)
            return;

        // What changes nothing is no change; taking back a change always is one, unless it is removed before and after.
        var isChange = what switch
        {
            What.Restore => now is null,
            What.TakeBack => now is not null || wanted is not null,
            _ => now != wanted,
        };
        if (isChange)
            piece.Changes.Add(wanted);
    }

    private static Piece? Owner(List<Piece> model, string tag, Piece? but) =>
        model.Find(piece => piece != but && piece.Now is { } now && GearTag.KeyOf(now.Tag) == GearTag.KeyOf(tag));

    private static async Task CompareAsync(Store store, List<Piece> model, CancellationToken token)
    {
        var news = await store.Gear.NewsAsync(0, token);
        Assert.Equal(model.Count, news.Gear.Length);
        Assert.Equal(model.Sum(piece => (long)piece.Changes.Count), news.Stamp);
        foreach (var piece in model)
        {
            var kept = news.Gear.Single(gear => gear.Id == piece.Id);
            Assert.Equal((piece.Now is null, piece.Last, (long)piece.Changes.Count), (kept.IsRemoved, kept.Content, kept.Revision));
            var history = await store.Gear.HistoryAsync(piece.Id, token);
            Assert.Equal(piece.Changes, history.Select(change => change.After));
            Assert.Equal(piece.Changes.Prepend(null).SkipLast(1), history.Select(change => change.Before));
            if (piece.Now is { } now)
                Assert.Equal(piece.Id, (await store.Gear.FindAsync(GearKind.Load, now.Tag, token))!.Id);
        }
    }

    private sealed record Piece(Guid Id, GearContent First)
    {
        /// <summary>What was said of it after each change; null where it was removed.</summary>
        public List<GearContent?> Changes { get; } = [First];

        public GearContent? Now => Changes[^1];

        public GearContent Last => Changes.FindLast(content => content is not null)!;
    }
}
