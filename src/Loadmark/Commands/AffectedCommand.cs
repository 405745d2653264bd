using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Processes;
using Loadmark.Questions;
using Loadmark.Terminal;
using Loadmark.Workshop.Library;

namespace Loadmark.Commands;

/// <summary><c>loadmark rigs affected</c>: a figure of a piece of gear changed; what does that mean to the rigs that have it?</summary>
internal sealed class AffectedCommand(CommandInput input)
{
    private readonly LibrarySession _session = new(input);

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = "the rigs that have other figures of a piece of gear than the library now has, each with its verdict before and after",
        Parameters = [new("TAG", "The tag of a piece of gear.")],
        Options = [QuestionSpecs.Kind],
        Needs = "the tag of one piece of gear",
        IsOnStore = true,
        Json = "One object: the piece, and the rigs with their verdicts before and after.",
        Example = "loadmark rigs affected delay-2",
        Run = static input => new AffectedCommand(input).Run(),
    };

    /// <summary>Finds the rigs and answers; 1 where one of them fails or does harm with the library's figures.</summary>
    private int Run()
    {
        if (LibraryOptions.KindOf(input, out var complaint) is var kind && complaint is not null)
            return input.Refuse(complaint);
        if (input.Words is not [var tag])
            return input.Refuse();
        return _session.Use(makes: false, async (library, stop) =>
        {
            if (_session.Find(await library.Cache.NowAsync(stop), tag, kind) is not { } gear)
                return ExitCode.Unreadable;
            var ordered =
                await AffectedInOrder.FindAsync(new AffectedRigs(library.Store, library.Cache), gear, new AffectedOptions(), stop);
            if (input.Json)
                RigsJson.Write(input.Process.Output, gear, ordered);
            else
                SheetPrinter.Print(input.Process, sheet => AffectedPage.Write(sheet, gear, ordered));
            return ordered.Exists(static rig => rig.After?.IsRefused == true) ? ExitCode.Refused : ExitCode.Fine;
        });
    }
}
