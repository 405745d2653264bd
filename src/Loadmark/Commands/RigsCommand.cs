using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Texts;
using Loadmark.Files;
using Loadmark.Processes;
using Loadmark.Outputs;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Sources;
using Loadmark.Storage.Rigs;
using Loadmark.Workshop.DataFolders;

namespace Loadmark.Commands;

/// <summary><c>loadmark rigs list</c>, <c>rigs import</c> and <c>rigs export</c>: the rigs that are kept, from and to files.</summary>
internal sealed class RigsCommand(CommandInput input)
{
    private static readonly OptionSpec Linked = new(
        "linked", OptionKind.Flag, "Let the file go on taking gear from the library; else what it takes is written into it.");

    private readonly LibrarySession _session = new(input);

    /// <summary>The command that lists.</summary>
    public static CommandSpec ListSpec { get; } = new()
    {
        Question = "all of them, the last changed first",
        IsOnStore = true,
        Json = "One object: rigs, the last changed first.",
        Example = "loadmark rigs list",
        Run = static input => new RigsCommand(input).List(),
    };

    /// <summary>The command that takes rig files in.</summary>
    public static CommandSpec ImportSpec { get; } = new()
    {
        Question = "keeps rig files, each as it stands",
        Parameters = [new("FILE", "A rig file, or - for one on standard input.") { IsRepeated = true }],
        Needs = "the path of a rig file",
        IsOnStore = true,
        Json = "One object: rigs, those that are kept now.",
        Example = "loadmark rigs import examples/pit.rig.yaml",
        Run = static input => new RigsCommand(input).Import(),
    };

    /// <summary>The command that writes a rig out.</summary>
    public static CommandSpec ExportSpec { get; } = new()
    {
        Question = "writes a rig to a file that stands alone",
        Parameters = [new("RIG", "The name or id of a rig that is kept."), new("FILE", "Where to.")],
        Options = [Linked, CommonOptions.Force],
        Needs = "a rig that is kept, and the path of the file to write",
        IsOnStore = true,
        Json = "One object: rigs, with the one that was written.",
        Example = "loadmark rigs export \"Pit board, bass chair\" pit.rig.yaml",
        Run = static input => new RigsCommand(input).Export(),
    };

    private int List() => input.Words.Count > 0 ? input.Refuse() : _session.Use(makes: false, async (library, stop) =>
    {
        var rigs = await library.Store.Rigs.ListAsync(stop);
        if (input.Json)
            RigsJson.Write(input.Process.Output, rigs);
        else
            SheetPrinter.Print(input.Process, sheet => RigsPage.Write(sheet, rigs));
        return ExitCode.Fine;
    });

    /// <summary>Keeps rig files, each as it stands; one that cannot be read keeps no other from it.</summary>
    private int Import()
    {
        if (StandardInput.IsNamedTwice(input.Words))
            return input.Refuse(StandardInput.OnceOnly);
        return input.Words.Count == 0 ? input.Refuse() : _session.Use(makes: true, ImportAsync);
    }

    private async Task<int> ImportAsync(OpenLibrary library, CancellationToken stop)
    {
        var kept = new List<RigSummary>();
        var faulty = new List<CheckAnswer>();
        var now = await library.Cache.NowAsync(stop);
        foreach (var path in input.Words)
        {
            var (reading, text) = input.Rigs.ReadWithText(path, now);
            if (reading.Rig is not { } rig)
            {
                faulty.Add(new CheckAnswer(path, null, reading.Errors));
                continue;
            }

            var added = await library.Store.Rigs.AddAsync(rig.Name, text!, stop);
            kept.Add(new RigSummary(added.Id, added.Name, added.Changed, added.Revision));
        }

        input.Complaints.Tell(faulty);
        if (input.Json)
            RigsJson.Write(input.Process.Output, kept);
        else
            SheetPrinter.Print(input.Process, sheet => RigsPage.WriteKept(sheet, kept));
        return faulty.Count > 0 ? ExitCode.Unreadable : ExitCode.Fine;
    }

    /// <summary>Writes a rig to a file; what it takes from the library is written into it, unless it is asked not to be.</summary>
    private int Export()
    {
        if (input.Words is not [var rig, var file])
            return input.Refuse();
        return new OutputFiles(input.Process, input.Data).Complaint(file, "rigs export", input.Has(CommonOptions.Force)) is { } complaint
            ? input.Complaints.Unusable(complaint)
            : _session.Use(makes: false, (library, stop) => ExportAsync(rig, file, library, stop));
    }

    private async Task<int> ExportAsync(string typed, string file, OpenLibrary library, CancellationToken stop)
    {
        if (await FindAsync(library, typed, stop) is not { } rig)
            return ExitCode.Unreadable;
        var text = rig.Text;
        if (!input.Has(Linked))
        {
            var (update, errors) = RigFileEditor.WriteOut(text, await library.Cache.NowAsync(stop));
            if (update is null)
                return input.Complaints.Unreadable([new CheckAnswer(rig.Name, null, errors)], input.Json);
            text = update.Text;
        }

        if (!new OutputFiles(input.Process, input.Data).TrySave(file, text, input.Has(CommonOptions.Force)))
            return ExitCode.Unreadable;
        if (input.Json)
            RigsJson.Write(input.Process.Output, [new RigSummary(rig.Id, rig.Name, rig.Changed, rig.Revision)]);
        else
            SheetPrinter.Print(input.Process, sheet => RigsPage.WriteExport(sheet, rig.Name, file, isWrittenOut: text != rig.Text));
        return ExitCode.Fine;
    }

    private async Task<StoredRig?> FindAsync(OpenLibrary library, string typed, CancellationToken stop)
    {
        var rigs = await library.Store.Rigs.ListAsync(stop);
        List<RigSummary> found = [.. rigs.Where(rig => $"{rig.Id}".Equals(typed, StringComparison.OrdinalIgnoreCase)
            || rig.Name.Equals(typed, StringComparison.OrdinalIgnoreCase))];
        if (found.Count == 1)
            return await library.Store.Rigs.FindAsync(found[0].Id, stop);
        var nearest = NearestWord.Find(typed, rigs.Select(static rig => rig.Name));
        input.Complaints.Unusable(found.Count > 1
            ? $"there are {found.Count} rigs called '{typed}'. Name one by its id: {string.Join(", ", found.Select(static rig => rig.Id))}."
            : $"there is no rig called '{typed}'.{(nearest is null ? " See: loadmark rigs list" : $" Did you mean '{nearest}'?")}");
        return null;
    }
}
