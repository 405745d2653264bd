using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Workshop.DataFolders;
using Loadmark.Workshop.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear list</c> and <c>gear show</c>: what does the library know?</summary>
internal sealed class GearReadCommand(CommandInput input)
{
    private readonly LibrarySession _session = new(input);

    /// <summary>The command that lists.</summary>
    public static CommandSpec ListSpec { get; } = new()
    {
        Question = "all gear of the library, or what fits the words best",
        Parameters =
        [
            new("WORDS", "Part of a tag, a name, a label, or a word that it is filed under. Typos are forgiven.") { IsOptional = true },
        ],
        Options = [QuestionSpecs.Kind],
        IsOnStore = true,
        Json = "One object: gear, each piece with its kind, tag, name, label and figures.",
        Example = "loadmark gear list delay",
        Run = static input => new GearReadCommand(input).List(),
    };

    /// <summary>The command that shows.</summary>
    public static CommandSpec ShowSpec { get; } = new()
    {
        Question = "what is said of one piece, what was measured, which rigs have it, what was changed",
        Parameters = [new("TAG", "The tag of a piece of gear.")],
        Options = [QuestionSpecs.Kind],
        Needs = "one tag",
        IsOnStore = true,
        Json = "One object: the piece, its readings, its changes, its rigs.",
        Example = "loadmark gear show delay-2",
        Run = static input => new GearReadCommand(input).Show(),
    };

    private int List()
    {
        if (LibraryOptions.KindOf(input, out var complaint) is var kind && complaint is not null)
            return input.Refuse(complaint);
        var words = string.Join(' ', input.Words);
        return _session.Use(makes: false, async (library, stop) =>
        {
            var found = await ListedGear.FindAsync(library.Store, library.Cache, words, kind, null, stop);
            if (input.Json)
                GearJson.WriteList(input.Process.Output, found);
            else
                SheetPrinter.Print(input.Process, sheet => GearListPage.Write(sheet, found, words));
            return ExitCode.Fine;
        });
    }

    private int Show()
    {
        if (LibraryOptions.KindOf(input, out var complaint) is var kind && complaint is not null)
            return input.Refuse(complaint);
        if (input.Words is not [var tag])
            return input.Refuse();
        return _session.Use(makes: false, async (library, stop) =>
            _session.Find(await library.Cache.NowAsync(stop), tag, kind) is { } gear
                ? await ShowAsync(library, gear, stop)
                : ExitCode.Unreadable);
    }

    /// <summary>Shows a piece.</summary>
    /// <param name="library">The library.</param>
    /// <param name="gear">The piece.</param>
    /// <param name="stop">Cancels.</param>
    /// <returns>The exit code.</returns>
    public async Task<int> ShowAsync(OpenLibrary library, LibraryGear gear, CancellationToken stop)
    {
        var shown = await ShownGear.OfAsync(library.Store, library.Editor, gear, stop);
        if (input.Json)
            GearJson.Write(input.Process.Output, shown);
        else
            SheetPrinter.Print(input.Process, sheet => GearPage.Write(sheet, shown));
        return ExitCode.Fine;
    }
}
