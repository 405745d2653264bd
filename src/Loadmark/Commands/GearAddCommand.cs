using Loadmark.Answers;
using Loadmark.CommandLines;
using Loadmark.Core.Gear;
using Loadmark.Core.Rigs;
using Loadmark.Files.Forms;
using Loadmark.Files.Library;
using Loadmark.Questions;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;
using Loadmark.Workshop.TypedInput;

namespace Loadmark.Commands;

/// <summary><c>loadmark gear add</c>: puts gear into the library.</summary>
internal sealed class GearAddCommand(CommandInput input)
{
    private static readonly OptionSpec From = new(
        "from", OptionKind.Text, "Add what this rig file has, with --kind only that; - is one on standard input.")
    {
        Placeholder = "RIG",
        Needs = "the name of a file",
    };

    private static readonly OptionSpec Name = new("name", OptionKind.Text, "The name of the piece.") { Placeholder = "NAME" };
    private static readonly OptionSpec Filed = new("words", OptionKind.Text, "The words that the piece is filed under, parted by commas.")
    {
        Placeholder = "WORD,WORD",
    };

    private readonly LibrarySession _session = new(input);

    /// <summary>What the command is called, takes and does.</summary>
    public static CommandSpec Spec { get; } = new()
    {
        Question = "adds a load, or with --kind supply a supply with the outlets that its label says; or what a rig has",
        Forms = "TAG \"LABEL\" | --from RIG",
        Parameters = [new("TAG", "The tag that rigs name the piece by."), new("LABEL", "What is printed on it, in quotes.")],
        Options =
        [
            From,
            QuestionSpecs.Kind with { Text = "load (unless said otherwise), supply or lead." },
            Name,
            Filed,
            LibraryOptions.Take,
            LibraryOptions.TakeAll,
        ],
        Needs = "a tag and what is printed, or --from with the path of a rig file",
        IsOnStore = true,
        Json = "One object: the piece; with --from, what was taken.",
        Example = "loadmark gear add delay-2 \"9V DC 300mA\" --name \"Delay with the long tail\"",
        Run = static input => new GearAddCommand(input).Run(),
    };

    private int Run()
    {
        if (LibraryOptions.KindOf(input, out var complaint) is var kind && complaint is not null)
            return input.Refuse(complaint);
        return (input.Words, input.Text(From)) switch
        {
            ([], { } path) => AddFromRig(path, kind),
            ([var tag, var label], null) => AddOne(tag, label, kind ?? GearKind.Load),
            _ => input.Refuse(),
        };
    }

    private int AddOne(string tag, string label, GearKind kind)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal) { ["label"] = label, ["name"] = input.Text(Name) ?? "" };
        var (piece, fault) = PieceOf(kind, tag, values);
        if (piece is null)
            return input.Complaints.Unusable(fault!);
        return _session.Use(makes: true, async (library, stop) =>
        {
            ValueList<string> words =
            [
                .. CommaList.Of(input.Text(Filed) ?? "")
                    .Distinct(StringComparer.OrdinalIgnoreCase),
            ];
            var outcome = await library.Editor.AddAsync(piece, words, "typed in", stop);
            if (outcome.State == GearState.TagTaken)
                return input.Complaints.Unusable($"the library has a {JsonWords.Of(piece.Kind)} with the tag {outcome.Gear!.Content.Tag} "
                    + $"already. Nothing was changed. See: loadmark gear show {outcome.Gear.Content.Tag}");
            return await new GearReadCommand(input).ShowAsync(library, new LibraryGear(outcome.Gear!), stop);
        });
    }

    private int AddFromRig(string path, GearKind? kind)
    {
        var reading = input.Rigs.Read(path);
        if (reading.Rig is not { } rig)
            return input.Complaints.Unreadable([new CheckAnswer(path, null, reading.Errors)], input.Json);
        return _session.Use(makes: true, async (library, stop) =>
        {
            var preview = ImportPreview.Of(await library.Cache.NowAsync(stop), rig);
            if (kind is { } only)
                preview = new ImportPreview([.. preview.Rows.Where(row => row.Kind == only)]);
            return await new GearFileCommand(input).TakeAsync(library, preview, $"from the rig {rig.Name}", [], stop);
        });
    }

    private static (GearPiece? Piece, string? Fault) PieceOf(GearKind kind, string tag, Dictionary<string, string> values)
    {
        switch (kind)
        {
            case GearKind.Load:
                var load = GearForm.ReadLoad(tag, values);
                return (load.Value is null ? null : GearPiece.Of(load.Value), load.Faults.Values.FirstOrDefault());
            case GearKind.Supply:
                var supply = GearForm.ReadSupply(tag, values);
                return (supply.Value is null ? null : GearPiece.Of(supply.Value), supply.Faults.Values.FirstOrDefault());
            default:
                return (null, "a lead has no label; put leads into a file and use: loadmark gear import FILE");
        }
    }
}
