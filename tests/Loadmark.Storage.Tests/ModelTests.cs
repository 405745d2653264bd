using CsCheck;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Rigs;
using Loadmark.Storage.Sqlite;
using Loadmark.Storage.Tests.Model;

namespace Loadmark.Storage.Tests;

/// <summary>Whatever the user does, in whatever order: the store does as the model does.</summary>
public sealed class ModelTests
{
    /// <summary>Few, so that the oldest edits are forgotten within a short test.</summary>
    private const int EditsKept = 5;

    private static readonly Gen<Step> Steps = Gen.Select(
        Gen.Frequency(
            (8, StepKind.Save), (1, StepKind.SaveTheSame), (5, StepKind.Undo), (4, StepKind.Redo),
            (1, StepKind.Remove), (2, StepKind.Restore), (1, StepKind.Stale), (1, StepKind.Reopen)),
        Texts.Words, Gen.OneOf(Texts.Any, Texts.Lines), Texts.Words, (kind, name, text, what) => new Step(kind, name, text, what));

    [Fact]
    public Task Any_order_of_edits_undo_redo_removing_and_reopening() =>
        Gen.Select(Texts.Words, Texts.Any, Steps.Array[1, 40]).SampleAsync((name, text, steps) => RunAsync(name, text, steps), iter: Rounds.Of(60), threads: 2);

    [Fact]
    public async Task A_thousand_edits_can_be_undone()
    {
        var token = TestContext.Current.CancellationToken;
        using var folder = new TemporaryFolder();
        using var store = await folder.OpenAsync();
        var rig = await store.Rigs.AddAsync("0", "rig: 0\n", token);
        for (var edit = 1; edit <= RigStore.EditsKept + 3; edit++)
            rig = (await store.Rigs.SaveAsync(rig.Id, rig.Revision, $"{edit}", $"rig: {edit}\n", $"edit {edit}", token)).Rig!;

        Assert.True(RigStore.EditsKept >= 1000);
        Assert.Equal($"{RigStore.EditsKept}", Outside.Ask(folder.Database, "SELECT COUNT(*) FROM Edits"));
        for (var edit = RigStore.EditsKept + 3; edit > 3; edit--)
        {
            Assert.Equal(($"rig: {edit}\n", $"edit {edit}"), (rig.Text, rig.UndoWhat));
            rig = (await store.Rigs.UndoAsync(rig.Id, rig.Revision, token)).Rig!;
        }

        Assert.Equal(("rig: 3\n", null, "edit 4"), (rig.Text, rig.UndoWhat, rig.RedoWhat));
    }

    private static async Task RunAsync(string name, string text, Step[] steps)
    {
        var token = TestContext.Current.CancellationToken;
        using var folder = new TemporaryFolder();
        var store = NewStore(folder);
        try
        {
            Assert.True((await store.OpenAsync(token)).WasCreated);
            var id = (await store.Rigs.AddAsync(name, text, token)).Id;
            var model = new RigModel(name, text, EditsKept);
            await CompareAsync(store, id, model);
            foreach (var step in steps)
            {
                if (step.Kind == StepKind.Reopen)
                {
                    store.Dispose();
                    store = NewStore(folder);
                    Assert.Equal(new StoreOpening(), await store.OpenAsync(token));
                }
                else
                {
                    await TakeAsync(store, id, model, step);
                }

                await CompareAsync(store, id, model);
            }
        }
        finally
        {
            store.Dispose();
        }
    }

    private static Store NewStore(TemporaryFolder folder) => new(new DatabaseFile(folder.Path), TimeProvider.System, EditsKept);

    private static async Task TakeAsync(Store store, Guid id, RigModel model, Step step)
    {
        var (expected, was) = (model.IsRemoved && step.Kind != StepKind.Restore ? SaveState.Gone : SaveState.Saved, model.Revision);
        if (expected == SaveState.Saved)
        {
            switch (step.Kind)
            {
                case StepKind.Save: model.Save(step.Name, step.Text, step.What); break;
                case StepKind.Undo: model.Undo(); break;
                case StepKind.Redo: model.Redo(); break;
                case StepKind.Remove: model.Remove(); break;
                case StepKind.Restore: model.Restore(); break;
                case StepKind.Stale: expected = SaveState.Conflict; break;
            }
        }

        var outcome = await (step.Kind switch
        {
            StepKind.Save => store.Rigs.SaveAsync(id, was, step.Name, step.Text, step.What),
            StepKind.SaveTheSame => store.Rigs.SaveAsync(id, was, model.Name, model.Text, step.What),
            StepKind.Undo => store.Rigs.UndoAsync(id, was),
            StepKind.Redo => store.Rigs.RedoAsync(id, was),
            StepKind.Remove => store.Rigs.RemoveAsync(id, was),
            StepKind.Restore => store.Rigs.RestoreAsync(id),
            _ => store.Rigs.SaveAsync(id, was - 1, step.Name, step.Text, step.What),
        });
        Assert.Equal(expected, outcome.State);
        Compare(outcome.Rig, model);
    }

    private static async Task CompareAsync(Store store, Guid id, RigModel model)
    {
        var (found, list) = (await store.Rigs.FindAsync(id), await store.Rigs.ListAsync());
        if (model.IsRemoved)
        {
            Assert.Null(found);
            Assert.Empty(list);
            return;
        }

        Compare(found, model);
        Assert.Equal([new RigSummary(id, found!.Name, found.Changed, found.Revision)], list);
    }

    private static void Compare(StoredRig? rig, RigModel model)
    {
        Assert.NotNull(rig);
        Assert.Equal((model.Name, model.Text, model.Revision, model.UndoWhat, model.RedoWhat), (rig.Name, rig.Text, rig.Revision, rig.UndoWhat, rig.RedoWhat));
    }
}
