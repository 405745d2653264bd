using System.Globalization;
using Loadmark.Core.Gear;
using Loadmark.Core.Readings;
using Loadmark.Files.Library;
using Loadmark.Shapes;
using Loadmark.Storage.Gear;
using Loadmark.Workshop.Library;

namespace Loadmark.Answers;

/// <summary>Gear of the library as JSON.</summary>
internal static class GearJson
{
    private const string KeyAbout = "The key of the rig file; of an outlet or a bank with its id: outlet 5.";

    private static JsonShape<GearField> Field { get; } = new JsonShape<GearField>("GearField", "One thing that is said.")
        .Text("key", static field => field.Key, KeyAbout)
        .Text("value", static field => field.Value, "What is said.");

    private static JsonShape<GearDifference> Difference { get; } = new JsonShape<GearDifference>(
            "GearDifference", "One thing that is said otherwise.")
        .Text("key", static difference => difference.Key, KeyAbout)
        .Text("before", static difference => difference.Before, "What was said; null where nothing was.", Presence.OrNull)
        .Text("after", static difference => difference.After, "What is said; null where nothing is.", Presence.OrNull);

    /// <summary>The member <c>differences</c>: what is said otherwise.</summary>
    public static JsonShape<IEnumerable<GearDifference>> Differences { get; } = new JsonShape<IEnumerable<GearDifference>>("", "")
        .List("differences", static differences => differences, Difference, "What is said otherwise.");

    private static JsonShape<TaggedChange> Change { get; } = new JsonShape<TaggedChange>("GearChange", "One change.")
        .Count("number", static tagged => tagged.Change.Number, "Counts up from 1; the revision after it.")
        .Text("what", static tagged => tagged.Change.What, "What it did.")
        .Moment("made", static tagged => Moment(tagged.Change.Made), "When it was made, UTC.")
        .Flag("removes", static tagged => tagged.Change.After is null, "Whether it removed the piece.")
        .Include(Differences, static tagged => GearChanges.DifferencesOf(tagged.Change, tagged.Tag));

    private static JsonShape<MeasuredDraw> Draw { get; } = new JsonShape<MeasuredDraw>("MeasuredDraw", "What readings come to.")
        .Figure("amps", static draw => draw.Figure.Value, "The library's figure: their mean, rounded, A.")
        .Figure(
            "seconds", static draw => draw.Duration?.Value, "How long a starting current lasts, s; null where it was not timed.",
            Presence.OrNull)
        .Count("readings", static draw => draw.Count, "How many readings there are.")
        .Count("leftOut", static draw => draw.LeftOut.Count, "How many of them are too far from the rest to count.")
        .Figure("leastAmps", static draw => draw.Least.Value, "The least that counts, A.")
        .Figure("mostAmps", static draw => draw.Most.Value, "The most that counts, A.")
        .Figure(
            "deviationAmps", static draw => (decimal?)draw.Deviation, "Their standard deviation, A; null where there are too few.",
            Presence.OrNull)
        .Figure(
            "uncertaintyAmps", static draw => (decimal?)draw.Uncertainty,
            "The standard uncertainty of the mean, A; null where nothing tells it.", Presence.OrNull)
        .Figure(
            "uncertaintyFromReadingsAmps", static draw => (decimal?)draw.FromScatter,
            "What the readings have to do with it, A; null where there are too few.", Presence.OrNull)
        .Figure(
            "uncertaintyFromMeterAmps", static draw => (decimal?)draw.FromMeter,
            "What the meter has to do with it, A; null where its accuracy is not known.", Presence.OrNull)
        .Text("how", static draw => DrawEstimate.Explain(draw), "How the figure came about, in a sentence.");

    private static JsonShape<StoredReading> Reading { get; } = new JsonShape<StoredReading>("MeterReading", "One reading.")
        .Word("of", static one => one.Reading.Kind, JsonWords.Of, "What was measured.")
        .Figure("amps", static one => one.Reading.Current.Value, "What the meter showed, A.")
        .Figure(
            "seconds", static one => one.Reading.Duration?.Value, "How long it lasted, s; null where it was not timed.", Presence.OrNull)
        .Figure(
            "meterShare", static one => one.Reading.Meter?.Share,
            "How far the meter may be off, as a share of the reading; null where it is not known.", Presence.OrNull)
        .Figure(
            "meterAmps", static one => one.Reading.Meter?.Plus.Value, "How far it may be off besides, A; null where it is not known.",
            Presence.OrNull)
        .Moment("taken", static one => Moment(one.Reading.Taken), "When, UTC.")
        .Text("note", static one => one.Reading.Note, "What there is to say of it; null for nothing.", Presence.OrNull)
        .Flag("struckOut", static one => one.IsStruckOut, "Whether somebody has struck it out, so that it does not count.");

    private static JsonShape<LoadMeasurements> Measured { get; } = new JsonShape<LoadMeasurements>("", "")
        .Value("running", static measured => measured.Running, Draw, Presence.OrNull)
        .Value("starting", static measured => measured.Starting, Draw, Presence.OrNull)
        .List("readings", static measured => measured.Readings, Reading, "The readings, struck out ones too, the oldest first.");

    /// <summary>What a piece is: the members that each answer about gear begins with.</summary>
    public static JsonShape<LibraryGear> Head { get; } = new JsonShape<LibraryGear>("", "")
        .Word("kind", static gear => gear.Kind, JsonWords.Of, "What sort of thing it is.")
        .Text("tag", static gear => gear.Tag, "Its tag.")
        .Text("name", static gear => OrNull(gear.Name), "Its name; null where it has none.", Presence.OrNull)
        .Text(
            "label", static gear => OrNull(gear.Stored.Content.Label), "What is printed on it; null where that is not known.",
            Presence.OrNull)
        .Texts("words", static gear => gear.Stored.Content.Words, "The words that it is filed under.")
        .When(static gear => gear.Kind == GearKind.Load, static members => members
            .Figure(
                "runAmps", static gear => gear.Piece?.Load?.Run?.Value,
                "Of a load what it draws when running, A; null where only its label tells.",
                Presence.OrNull)
            .Figure(
                "startAmps", static gear => gear.Piece?.Load?.Start?.Current.Value,
                "Of a load what it draws when starting, A; null where only its label tells.", Presence.OrNull)
            .Figure(
                "startSeconds", static gear => gear.Piece?.Load?.Start?.Duration?.Value,
                "Of a load how long that lasts, s; null where it is not known.", Presence.OrNull))
        .Count(
            "revision", static gear => gear.Stored.Revision, "Grows with every change; to be sent back in If-Match with the next one.")
        .Moment("changed", static gear => Moment(gear.Stored.Changed), "When it was changed last, UTC.");

    private static JsonShape<ListedGear> Summary { get; } = new JsonShape<ListedGear>("GearSummary", "A piece of gear, in a list.")
        .Include(Head, static one => one.Gear)
        .Count("rigs", static one => one.Rigs, "How many rigs have it.");

    /// <summary>A list of gear.</summary>
    public static JsonShape<IReadOnlyList<ListedGear>> List { get; } = new JsonShape<IReadOnlyList<ListedGear>>(
            "GearList", "Gear of the library.")
        .List(
            "gear", static gear => gear, Summary,
            "The best match first; where nothing is looked for, loads, supplies and leads by tag.");

    /// <summary>One piece, with all there is to say of it.</summary>
    public static JsonShape<ShownGear> Shown { get; } = new JsonShape<ShownGear>(
            "GearShown", "A piece of gear, with all there is to say of it.")
        .Include(Head, static shown => shown.Gear)
        .List(
            "fields", static shown => shown.Gear.Piece is { } piece ? GearText.FieldsOf(piece) : [], Field,
            "What is said of it, as a rig file spells it.")
        .Include(Measured, static shown => shown.Measured)
        .Texts("rigs", static shown => shown.Rigs.Select(static rig => rig.Name), "The rigs that have it, the last changed first.")
        .List(
            "changes", static shown => shown.Changes.Select(change => new TaggedChange(change, shown.Gear.Tag)), Change,
            "Every change, the oldest first.");

    /// <summary>A load, and what its readings come to.</summary>
    public static JsonShape<MeasuredGear> MeasuredLoad { get; } = new JsonShape<MeasuredGear>(
            "GearMeasured", "A load, and what its readings come to.")
        .Include(Head, static one => one.Gear)
        .Include(Measured, static one => one.Measured);

    /// <summary>Writes a list and a line end.</summary>
    public static void WriteList(Stream output, IReadOnlyList<ListedGear> gear) => JsonFormat.WriteLine(output, List, gear);

    /// <summary>Writes one piece and a line end.</summary>
    public static void Write(Stream output, ShownGear shown) => JsonFormat.WriteLine(output, Shown, shown);

    /// <summary>Writes what readings come to, with the piece, and a line end.</summary>
    public static void Write(Stream output, StoredGear gear, LoadMeasurements measured) =>
        JsonFormat.WriteLine(output, MeasuredLoad, new MeasuredGear(new LibraryGear(gear), measured));

    /// <summary>A moment as every program reads it (ISO 8601, UTC).</summary>
    public static string Moment(DateTimeOffset moment) =>
        moment.UtcDateTime.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", CultureInfo.InvariantCulture);

    private static string? OrNull(string text) => text.Length == 0 ? null : text;
}
