using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Threading.Channels;
using Loadmark.Core.Checks;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files;
using Loadmark.Files.Library;
using Loadmark.Simulation;
using Loadmark.Storage;
using Loadmark.Storage.Faults;
using Loadmark.Storage.Gear;
using Loadmark.Storage.Rigs;

namespace Loadmark.Workshop.Library;

/// <summary>Finds the rigs that a change of the library's gear means something to, and does for each what somebody decides.</summary>
/// <param name="store">What is kept, opened.</param>
/// <param name="cache">The library.</param>
public sealed class AffectedRigs(Store store, LibraryCache cache)
{
    /// <summary>What a rig says for itself, whatever the library says: it is neither a figure of the gear nor told by it.</summary>
    private static readonly string[] OfTheRig = ["name", "priority"];

    /// <summary>
    /// The rigs in which the library's figures of a piece differ from what they have, or, where they take it from the library, had before
    /// its last change; each with the verdict before and after. Rigs for which somebody has decided of this revision are left out.
    /// </summary>
    /// <param name="gear">The piece.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <returns>The rigs as they are done, in no particular order.</returns>
    /// <exception cref="StorageException">The medium failed.</exception>
    public IAsyncEnumerable<AffectedRig> FindAsync(LibraryGear gear, CancellationToken cancellationToken = default) =>
        FindAsync(gear, new AffectedOptions(), cancellationToken);

    /// <summary>The same, on fewer threads or with somebody who is told how far it has come.</summary>
    /// <param name="gear">The piece.</param>
    /// <param name="options">How they are looked for.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <returns>The rigs as they are done, in no particular order.</returns>
    /// <exception cref="StorageException">The medium failed.</exception>
    public async IAsyncEnumerable<AffectedRig> FindAsync(
        LibraryGear gear, AffectedOptions options, [EnumeratorCancellation] CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(gear);
        ArgumentNullException.ThrowIfNull(options);
        if (gear.Piece is not { } now)
            yield break;
        var library = await cache.NowAsync(cancellationToken);
        var decided = await store.Gear.Uses.DecisionsAsync(gear.Id, gear.Stored.Revision, cancellationToken);
        var before = await BeforeAsync(gear, cancellationToken);
        List<RigText> rigs = [.. (await store.Gear.Uses.RigsWithAsync(gear.Kind, gear.Tag, cancellationToken))
            .Where(rig => !decided.ContainsKey(rig.Rig.Id))];

        var done = 0;
        var found = Channel.CreateUnbounded<AffectedRig>();
        using var stop = CancellationTokenSource.CreateLinkedTokenSource(cancellationToken);
        var work = Task.Run(
            async () =>
            {
                Exception? fault = null;
                try
                {
                    var threads = new ParallelOptions
                    {
                        MaxDegreeOfParallelism = options.Threads ?? Environment.ProcessorCount,
                        CancellationToken = stop.Token,
                    };
                    await Parallel.ForEachAsync(rigs, threads, (rig, token) =>
                    {
                        if (Compare(rig, now, before, library, token) is { } affected)
                            found.Writer.TryWrite(affected);
                        options.Progress?.Report(new AffectedProgress(Interlocked.Increment(ref done), rigs.Count));
                        return ValueTask.CompletedTask;
                    });
                }
                catch (Exception caught) // handed to whoever reads the channel
                {
                    fault = caught;
                }

                found.Writer.Complete(fault);
            },
            CancellationToken.None);
        try
        {
            await foreach (var affected in found.Reader.ReadAllAsync(cancellationToken))
                yield return affected;
        }
        finally
        {
            await stop.CancelAsync();
            await work;
        }
    }

    /// <summary>
    /// Gives a rig the library's figures. One that takes the piece from there has them; that this is right is then remembered.
    /// </summary>
    /// <param name="rig">The rig as it was shown.</param>
    /// <param name="gear">The piece as it was shown.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<SaveState> TakeNewAsync(AffectedRig rig, LibraryGear gear, CancellationToken cancellationToken = default) =>
        DecideAsync(
            rig,
            gear,
            takesNew: true,
            (read, _) => rig.TakesFromLibrary ? read : Renewed(read, gear.Piece!),
            $"taking the library's figures of {gear.Tag}",
            cancellationToken);

    /// <summary>
    /// Leaves a rig the figures that it has. Into one that takes the piece from the library, those of before are written, and win there.
    /// </summary>
    /// <param name="rig">The rig as it was shown.</param>
    /// <param name="gear">The piece as it was shown.</param>
    /// <param name="cancellationToken">Gives up.</param>
    /// <exception cref="StorageException">The medium failed.</exception>
    public Task<SaveState> KeepOldAsync(AffectedRig rig, LibraryGear gear, CancellationToken cancellationToken = default) =>
        DecideAsync(
            rig,
            gear,
            takesNew: false,
            (read, before) => rig.TakesFromLibrary && before is not null ? WithFiguresOf(read, before) : read,
            $"keeping the figures of {gear.Tag} as they were",
            cancellationToken);

    private static Rig Renewed(Rig rig, GearPiece now) =>
        GearUse.Find(rig, now.Kind, now.Tag) is { } own && GearText.Merge(own, Figures(now, own)).Piece is { } merged
            ? GearUse.Put(rig, merged, fromLibrary: false)
            : rig;

    /// <summary>The library's piece without what a rig says for itself.</summary>
    private static GearPiece Figures(GearPiece now, GearPiece own) => now switch
    {
        { Load: { } load } => GearPiece.Of(load with { Name = own.Load?.Name, Priority = own.Load?.Priority }),
        { Supply: { } supply } => GearPiece.Of(supply with { Name = own.Supply?.Name }),
        _ => now,
    };

    /// <summary>A rig that takes a piece from the library, with the figures of another reading of it written beside.</summary>
    private static Rig WithFiguresOf(Rig rig, Rig before) => rig with
    {
        Loads =
        [
            .. rig.Loads.Items.Select(load =>
                before.Loads.Items.FirstOrDefault(one => one.Id == load.Id) is { } old && load.FromLibrary != old.FromLibrary
                    ? old with { FromLibrary = load.FromLibrary }
                    : load),
        ],
        Supplies =
        [
            .. rig.Supplies.Items.Select(supply =>
                before.Supplies.Items.FirstOrDefault(one => one.Id == supply.Id) is { } old && supply.FromLibrary != old.FromLibrary
                    ? old with { FromLibrary = supply.FromLibrary }
                    : supply),
        ],
    };

    private static AffectedRig? Compare(
        RigText kept, GearPiece now, GearPiece? before, GearSnapshot library, CancellationToken cancellationToken)
    {
        var affected = new AffectedRig { Rig = kept.Rig, TakesFromLibrary = false, Differences = [] };
        var reading = RigFileReader.Read(kept.Text, "", library);
        if (reading.Rig is not { } rig)
            return affected with { Problem = $"the rig cannot be read: line {reading.Errors[0].Line}: {reading.Errors[0].Message}" };
        if (GearUse.Find(rig, now.Kind, now.Tag) is not { } own)
            return null;
        if (!TakesFromLibrary(rig, now))
        {
            var renewed = Renewed(rig, now);
            var differences = Differences(own, GearUse.Find(renewed, now.Kind, now.Tag)!);
            var isSame = GearMatching.IsSame(own, now) || (before is not null && GearMatching.IsSame(own, before));
            affected = affected with { Differences = differences, IsInDoubt = !isSame };
            return differences.Length == 0 ? null : Judge(affected, rig, renewed, cancellationToken);
        }

        if (before is null || RigFileReader.Read(kept.Text, "", new EarlierGear(library, before)).Rig is not { } earlier)
            return null;
        var changes = Differences(GearUse.Find(earlier, now.Kind, now.Tag)!, own);
        return changes.Length == 0
            ? null
            : Judge(affected with { TakesFromLibrary = true, Differences = changes }, earlier, rig, cancellationToken);
    }

    private static ImmutableArray<GearDifference> Differences(GearPiece before, GearPiece after) =>
        [.. GearText.Differences(before, after).Where(static one => !OfTheRig.Contains(one.Key))];

    private static AffectedRig Judge(AffectedRig affected, Rig before, Rig after, CancellationToken cancellationToken)
    {
        try
        {
            return affected with { Before = Verdict(before, cancellationToken), After = Verdict(after, cancellationToken) };
        }
        catch (Core.Ratings.InvalidRigException fault)
        {
            return affected with { Problem = fault.Message };
        }
    }

    /// <summary>The circuit has nothing worse to say than that a rig fails: where the nameplates say so, it is not asked.</summary>
    private static CheckResult Verdict(Rig rig, CancellationToken cancellationToken) =>
        NameplateCheck.Of(rig) is { IsRefused: true } said ? said : RigAnalysis.Of(rig, AnalysisDepth.Verdict, cancellationToken).Check;

    private static bool TakesFromLibrary(Rig rig, GearPiece piece) => piece.Kind switch
    {
        GearKind.Load => rig.Loads.Items.Any(load => load.FromLibrary is not null && GearTag.KeyOf(load.Id) == GearTag.KeyOf(piece.Tag)),
        GearKind.Supply => rig.Supplies.Items.Any(
            supply => supply.FromLibrary is not null && GearTag.KeyOf(supply.Id) == GearTag.KeyOf(piece.Tag)),
        _ => false,
    };

    /// <summary>What was said of a piece before the last change that says something else; null when it always was so.</summary>
    private async Task<GearPiece?> BeforeAsync(LibraryGear gear, CancellationToken cancellationToken)
    {
        var history = await store.Gear.HistoryAsync(gear.Id, cancellationToken);
        var old = history.Reverse().Select(static change => change.After).OfType<GearContent>()
            .FirstOrDefault(content => content.Text != gear.Stored.Content.Text);
        return old is null ? null : GearText.Read(gear.Kind, gear.Tag, old.Text).Piece;
    }

    private async Task<SaveState> DecideAsync(
        AffectedRig affected,
        LibraryGear gear,
        bool takesNew,
        Func<Rig, Rig?, Rig> change,
        string what,
        CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(affected);
        ArgumentNullException.ThrowIfNull(gear);
        if (await store.Rigs.FindAsync(affected.Rig.Id, cancellationToken) is not { } kept)
            return SaveState.Gone;
        if (kept.Revision != affected.Rig.Revision)
            return SaveState.Conflict;
        var library = await cache.NowAsync(cancellationToken);
        if (RigFileReader.Read(kept.Text, "", library).Rig is { } rig)
        {
            var before = await BeforeAsync(gear, cancellationToken) is { } old
                ? RigFileReader.Read(kept.Text, "", new EarlierGear(library, old)).Rig
                : null;
            var changed = change(rig, before);
            if (changed != rig)
            {
                var outcome = await store.Rigs.SaveAsync(
                    kept.Id, kept.Revision, kept.Name, RigFileEditor.Update(kept.Text, changed).Text, what, cancellationToken);
                if (outcome.State != SaveState.Saved)
                    return outcome.State;
            }
        }

        return await store.Gear.Uses.DecideAsync(kept.Id, gear.Id, gear.Stored.Revision, takesNew, cancellationToken)
            ? SaveState.Saved
            : SaveState.Gone;
    }
}
