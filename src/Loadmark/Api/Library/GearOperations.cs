using Loadmark.Answers;
using Loadmark.Api.Requests;
using Loadmark.Questions;
using Loadmark.Shapes;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Library;

/// <summary>What the addresses of the gear library take and answer.</summary>
internal static class GearOperations
{
    private const string Group = "Gear library";

    private static readonly ApiContent Shown = ApiContent.Of(GearJson.Shown, "gear.show.json");
    private static readonly ApiContent Text = FileOf(
        ApiContent.Yaml, "A file of gear (docs/gear.md) as YAML, in UTF-8.", "gear.yaml");

    private static readonly ApiContent Table = FileOf(
        ApiContent.Csv, "A file of gear (docs/gear.md) as a table, in UTF-8.", "gear.export.csv");

    /// <summary>What one piece of gear may come as.</summary>
    private static readonly IReadOnlyList<ApiContent> Piece =
    [
        new(
            ApiContent.Json,
            new ValueDescription(
                JsonKind.Any,
                "A file of gear (docs/gear.md) as an object with loads, supplies or leads, each as in a rig file and with 'words' that it "
                + "is filed under; or such a file's text in quotes as a text of JSON."),
            "gear.json"),
        Text,
    ];

    /// <summary>What is looked for.</summary>
    public static OptionSpec Words { get; } = new(
        "words", OptionKind.Text, "Part of a tag, a name, a label, or a word that it is filed under; left out, all there is.")
    { Example = "dealy" };

    /// <summary>How many pieces are listed at most.</summary>
    public static OptionSpec Most { get; } = new(
        "most", OptionKind.Number, "At most so many; left out, the best 50 of what is looked for, or all there is.")
    { Example = "10" };

    /// <summary>What is taken of a file.</summary>
    public static OptionSpec Take { get; } = new(
        "take",
        OptionKind.Texts,
        "What to take: 'new' for what the library has not; 'all' for what it says otherwise, too; or 'new' and, of what it says otherwise, "
        + "these tags, parted by commas.")
    { Example = "new" };

    /// <summary>The form of a file.</summary>
    public static OptionSpec Form { get; } = new("form", OptionKind.Text, "yaml or csv; left out, what Accept asks for, or yaml.")
    {
        Words = ["yaml", "csv"],
        Example = "yaml",
    };

    /// <summary>The member of a reading's body for a running current.</summary>
    public static BodyMember Run { get; } = new("run", "The running current: 212 mA.") { IsOptional = true };

    /// <summary>The member of a reading's body for a starting current.</summary>
    public static BodyMember Start { get; } = new("start", "The starting current, and how long it lasted: 520 mA for 1.5 s.")
    {
        IsOptional = true,
    };

    /// <summary>The member of a reading's body for the meter's accuracy.</summary>
    public static BodyMember Meter { get; } = new("meter", "The meter's accuracy, as its leaflet tells it: 1 % + 2 mA.")
    {
        IsOptional = true,
    };

    /// <summary>The member of a reading's body for a remark.</summary>
    public static BodyMember Note { get; } = new("note", "What else there is to say.") { IsOptional = true };

    /// <summary>The body of a reading of a load.</summary>
    public static BodyShape Shows { get; } = new(
        "WhatTheMeterShowed", "What a meter showed of a load: run or start, or both.", [Run, Start, Meter, Note]);

    /// <summary>The operation that lists gear.</summary>
    public static ApiOperation List { get; } = new()
    {
        Name = "listGear",
        Group = Group,
        Summary = "What does the library know? Forgives typos.",
        Options = [Words, QuestionSpecs.Kind, Most],
        Answers = [ApiContent.Of(GearJson.List, "gear.list.json")],
        Refusals = [ProblemKind.Store],
    };

    /// <summary>The operation that tells one piece of gear.</summary>
    public static ApiOperation Get { get; } = new()
    {
        Name = "getGear",
        Group = Group,
        Summary = "One piece, with what is said of it, what was measured, its changes, and the rigs that have it.",
        Names = GearAddress.Parts,
        About = "Asked for application/yaml, what is said of it as a file of gear, which can be sent back as a change.",
        Answers = [Shown, Text],
        TellsRevision = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <summary>The operation that adds a piece of gear.</summary>
    public static ApiOperation Add { get; } = new()
    {
        Name = "addGear",
        Group = Group,
        Summary = "Adds a piece: a file of gear with one load, supply or lead, such as its label.",
        Status = StatusCodes.Status201Created,
        Options = [ApiOptions.What],
        Bodies = Piece,
        Answers = [Shown],
        TellsRevision = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.TagTaken, ProblemKind.Store],
    };

    /// <summary>The operation that changes a piece of gear.</summary>
    public static ApiOperation Change { get; } = new()
    {
        Name = "changeGear",
        Group = Group,
        Summary = "Says something else of a piece: all that is to be said of it, as a file of gear.",
        Names = GearAddress.Parts,
        NeedsRevision = true,
        About = "What the body says nothing of is no longer said. With another tag in the body, the piece has that one from now on. "
            + "Every change is kept.",
        Options = [ApiOptions.What],
        Bodies = Piece,
        Answers = [Shown],
        TellsRevision = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.TagTaken, ProblemKind.Conflict, ProblemKind.RevisionMissing, ProblemKind.Store],
    };

    /// <summary>The operation that removes a piece of gear.</summary>
    public static ApiOperation Remove { get; } = new()
    {
        Name = "removeGear",
        Group = Group,
        Summary = "Removes a piece from the library, which keeps it with its changes.",
        Names = GearAddress.Parts,
        NeedsRevision = true,
        Status = StatusCodes.Status204NoContent,
        Answers = [],
        Refusals = [ProblemKind.Conflict, ProblemKind.RevisionMissing, ProblemKind.Store],
    };

    /// <summary>Adds what a meter showed.</summary>
    public static ApiOperation Measure { get; } = new()
    {
        Name = "measureGear",
        Group = Group,
        Summary = "Adds what a meter showed of a load, and makes what all readings come to the library's figure.",
        Names = GearAddress.Parts,
        Bodies = [ApiContent.Of(Shows, "gear.reading.json")],
        Answers = [ApiContent.Of(GearJson.MeasuredLoad, "gear.measured.json")],
        Refusals = [ProblemKind.Conflict, ProblemKind.Store],
    };

    /// <summary>The rigs that a change means something to.</summary>
    public static ApiOperation Affected { get; } = new()
    {
        Name = "affectedRigs",
        Group = Group,
        Summary = "The rigs that have other figures of a piece than the library now has, with the verdict before and after.",
        Names = GearAddress.Parts,
        Answers = [ApiContent.Of(RigsJson.AllAffected, "gear.affected.json")],
        Streams = true,
        Refusals = [ProblemKind.Store],
    };

    /// <summary>Takes a file of gear.</summary>
    public static ApiOperation Import { get; } = new()
    {
        Name = "importGear",
        Group = Group,
        Summary = "What would taking a file of gear do; or takes it.",
        About = "Without 'take' nothing is changed.",
        Options =
        [
            Take,
            ApiOptions.File with { Text = "The name of the file, for the list of changes. Nothing is opened.", Example = "gear.yaml" },
        ],
        Bodies = [.. Piece, Table with { Example = "gear.csv" }],
        Answers = [ApiContent.Of(ImportJson.Taken, "gear.import.json")],
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };

    /// <summary>A file of what there is.</summary>
    public static ApiOperation Export { get; } = new()
    {
        Name = "exportGear",
        Group = Group,
        Summary = "A file of what the library has.",
        About = "A table holds gear of one kind: the loads, unless 'kind' says otherwise. Readings and earlier changes are not in it.",
        Options = [QuestionSpecs.Kind, Form],
        Answers = [Text, Table],
        Refusals = [ProblemKind.Store],
    };

    /// <summary>A body that is a file. Generators would take an answer that is a mere text for a text of JSON.</summary>
    private static ApiContent FileOf(string mediaType, string about, string example) =>
        new(mediaType, new ValueDescription(JsonKind.File, about), example);
}
