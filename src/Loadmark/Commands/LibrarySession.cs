using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Gear;
using Loadmark.Processes;
using Loadmark.Storage;
using Loadmark.Storage.Disk;
using Loadmark.Storage.Faults;
using Loadmark.Workshop.DataFolders;
using Loadmark.Workshop.Library;

namespace Loadmark.Commands;

/// <summary>Opens what is kept for a command, and says what stands in its way.</summary>
internal sealed class LibrarySession(CommandInput input)
{
    /// <summary>Runs a command on what is kept.</summary>
    /// <param name="makes">Whether the command makes a folder and a database where there are none. One that only looks would else hide that
    /// it is the wrong folder.</param>
    /// <param name="run">The command.</param>
    /// <returns>The exit code.</returns>
    public int Use(bool makes, Func<OpenLibrary, CancellationToken, Task<int>> run)
    {
        var stop = input.Process.Interruption();
        try
        {
            return UseAsync(DataFolder.From(input.Data, input.Process.Environment), makes, run, stop).GetAwaiter().GetResult();
        }
        catch (StorageException fault)
        {
            return input.Complaints.Unusable(fault.Message);
        }
    }

    /// <summary>The piece of gear that was meant; null when there is none, or there are several, which has been said then.</summary>
    public LibraryGear? Find(GearSnapshot library, string tag, GearKind? kind)
    {
        List<LibraryGear> found = [.. Enum.GetValues<GearKind>()
            .Where(one => kind is null || one == kind)
            .Select(one => library.Find(one, tag))
            .OfType<LibraryGear>()];
        if (found.Count == 1)
            return found[0];
        if (found.Count > 1)
        {
            input.Complaints.Unusable("there are several of that tag: "
                + $"{string.Join(", ", found.Select(static gear => $"a {JsonWords.Of(gear.Kind)}"))}. Say which with --kind.");
            return null;
        }

        var near = library.Search(tag, 3, kind);
        var hint = near.Length == 0 ? "" : $" Did you mean {string.Join(" or ", near.Select(static gear => gear.Tag))}?";
        input.Complaints.Unusable($"the library has no {(kind is { } one ? JsonWords.Of(one) : "gear")} with the tag '{tag}'.{hint}");
        return null;
    }

    private async Task<int> UseAsync(string folder, bool makes, Func<OpenLibrary, CancellationToken, Task<int>> run, CancellationToken stop)
    {
        if (StoreFolder.TroubleWith(folder) is { } unfit)
            throw unfit;
        if (!makes && !File.Exists(Path.Combine(folder, Store.FileName)))
            return input.Complaints.Unusable($"nothing is kept in {TerminalText.Neutral(folder)} yet. Name another folder with --data, "
                + "or begin with 'loadmark gear add' or 'loadmark rigs import'.");
        var (library, trouble) = await OpenLibrary.OpenAsync(folder, input.Process.Time, stop);
        if (library is null)
            return input.Complaints.Unusable(trouble!);
        using (library)
        {
            if (library.Remark is { } remark)
                input.Complaints.Warn(remark);
            var code = await run(library, stop);

            // After the answer: once a day, and no reason for another exit code.
            if (library.Store.HasChanged && await library.Store.Copies.KeepTodayAsync() is { } untaken)
                input.Complaints.Warn(untaken);
            return code;
        }
    }
}
