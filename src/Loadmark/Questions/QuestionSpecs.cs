using Loadmark.Answers;
using Loadmark.Workshop.Sheets;

namespace Loadmark.Questions;

/// <summary>The questions, and the options that commands and addresses share.</summary>
internal static class QuestionSpecs
{
    /// <summary>Whether the first seconds are computed in any case.</summary>
    public static OptionSpec AlsoStartUp { get; } = new(
        "startup", OptionKind.Flag, "Compute the first seconds in any case, not only where a figure calls for it.")
    { Example = "true" };

    /// <summary>The supplies that may be used.</summary>
    public static OptionSpec Only { get; } = new(
        "only", OptionKind.Texts, "Of the rig's supplies use these alone: names parted by commas, or the option several times.")
    { Placeholder = "SUPPLY", Example = "brick" };

    /// <summary>Whether as little as can be of the present wiring is changed.</summary>
    public static OptionSpec FewestMoves { get; } = new(
        "fewest-moves",
        OptionKind.Flag,
        "Move as few as possible of the loads that are wired now: before headroom and noise, never before safety or a load more.")
    { Example = "true" };

    /// <summary>Whether boards may help each other.</summary>
    public static OptionSpec AcrossBoards { get; } = new(
        "across-boards", OptionKind.Flag, "Let supplies of one 'board' feed loads of another; without it each board keeps to itself.")
    { Example = "true" };

    /// <summary>A load to come.</summary>
    public static OptionSpec Room { get; } = new(
        "room", OptionKind.Texts, "Keep room for a load to come, told by its label, such as \"9 V 300 mA\"; may be given several times.")
    { Placeholder = "LABEL", Example = "9 V 300 mA" };

    /// <summary>Whether every option to buy is shown.</summary>
    public static OptionSpec All { get; } = new(
        "all", OptionKind.Flag, "Show every option with its wiring, not only the cheapest; JSON has all of them in any case.")
    { Example = "true" };

    /// <summary>The seed of samples.</summary>
    public static OptionSpec Seed { get; } = new(
        "seed", OptionKind.Number, "The seed of these samples, 1 if not given: the same seed gives the same answer.")
    { Placeholder = "S", Example = "7" };

    /// <summary>How many samples.</summary>
    public static OptionSpec Spread { get; } = new(
        "spread",
        OptionKind.Number,
        "Compute it so many times more with draws, outlet voltages and lead lengths as they may be: what each load gets then, "
        + "and how likely the rig runs.")
    { Placeholder = "N", Example = "200", With = Seed };

    /// <summary>Whether a deck is for the steady state.</summary>
    public static OptionSpec Steady { get; } = new(
        "steady", OptionKind.Flag, "For the steady state; without it for the first seconds after switch-on.")
    { Example = "true" };

    /// <summary>
    /// The kind of gear; made when it is asked for, since its words are gone through by reflection, which other commands do without.
    /// </summary>
    public static OptionSpec Kind => field ??= new("kind", OptionKind.Text, "Only gear of this kind: load, supply or lead.")
    {
        Placeholder = "KIND",
        Words = JsonWords.GearKinds(),
        Example = "load",
    };

    /// <summary>Whether loads hang on one lead.</summary>
    public static OptionSpec Chain { get; } = new(
        "chain", OptionKind.Flag, "All loads hang on one lead with several plugs; without it each has an outlet, where there are several.")
    { Example = "true" };

    /// <summary>The mains.</summary>
    public static OptionSpec Mains { get; } = new("mains", OptionKind.Text, "The mains where it is played, such as \"230 V 50 Hz\".")
    {
        Placeholder = "VOLTS",
        Example = "230 V 50 Hz",
    };

    /// <summary>The parts of a sheet.</summary>
    public static OptionSpec SheetParts { get; } = new(
        "only",
        OptionKind.Texts,
        "Only these parts of the sheet, parted by commas: " + string.Join(", ", TypedSheetOptions.PartWords) + ".")
    { Placeholder = "PARTS", Example = "feeds" };

    /// <summary>The paper of a sheet.</summary>
    public static OptionSpec Paper { get; } = new("paper", OptionKind.Text, "The paper, a4 or letter; a4 if not given.")
    {
        Placeholder = "SIZE",
        Words = TypedSheetOptions.PaperWords,
        Needs = "a4 or letter",
        Example = "letter",
    };

    /// <summary>The size of labels.</summary>
    public static OptionSpec LabelSizes { get; } = new(
        "labels", OptionKind.Text, "The size of a label, width x height in mm, 15x8 to 190x100; 45x16 if not given.")
    { Placeholder = "SIZE", Needs = "a size such as 45x16", Example = "45x16" };

    /// <summary>Whom a player is to ask.</summary>
    public static OptionSpec Contact { get; } = new(
        "contact", OptionKind.Text, "Whom the player is to ask: a name, a number. Without it there is a line to write on.")
    { Placeholder = "TEXT", Example = "the workshop, extension 12" };

    /// <summary>The reels that cable is cut from.</summary>
    public static OptionSpec Reels { get; } = new(
        "reels",
        OptionKind.Texts,
        "Have the cable of the leads cut from these reels with the least waste: lengths parted by commas, such as \"25 m, 10 m x 2\".")
    { Placeholder = "LENGTHS", Needs = "lengths such as 25 m", Example = "25 m" };

    /// <summary>What the ends of a stretch of cable take up.</summary>
    public static OptionSpec Ends { get; } = new(
        "ends", OptionKind.Text, "What stripping and soldering take up of each stretch, both ends together; 40 mm if not given.")
    { Placeholder = "LENGTH", Needs = "a length such as 40 mm", Example = "40 mm" };

    /// <summary>What a cut takes away.</summary>
    public static OptionSpec Cut { get; } = new("cut", OptionKind.Text, "What each cut takes away; nothing if not given.")
    {
        Placeholder = "LENGTH",
        Needs = "a length such as 2 mm",
        Example = "2 mm",
    };

    /// <summary>What does a label say?</summary>
    public static QuestionSpec Read { get; } = new("read", "what does this nameplate say?");

    /// <summary>May this be plugged in?</summary>
    public static QuestionSpec Ask { get; } = new("ask", "may I plug this in; and if there is nothing to plug into, what would do?")
    {
        Options = [Chain, Mains],
    };

    /// <summary>Is a rig fine as wired?</summary>
    public static QuestionSpec Check { get; } = new(
        "check", "as wired: is it safe, does it run, what is left?")
    { Options = [AlsoStartUp] };

    /// <summary>How is a rig best wired?</summary>
    public static QuestionSpec Plan { get; } = new("plan", "what should feed what, and why not where it cannot be?")
    { Options = [Only, FewestMoves, AcrossBoards] };

    /// <summary>What is to be bought?</summary>
    public static QuestionSpec Buy { get; } = new(
        "buy", "which supplies should I buy, from this price list?")
    { Options = [Room, Only, AcrossBoards, All] };

    /// <summary>What is the steady state?</summary>
    public static QuestionSpec Settle { get; } = new("settle", "what voltage does each load really get, through its lead?")
    {
        Options = [Spread],
    };

    /// <summary>How do the first seconds go?</summary>
    public static QuestionSpec StartUp { get; } = new(
        "startup", "does it all come up after switch-on, and stay up; if not, who trips what?")
    { Options = [Spread] };

    /// <summary>The circuit as a deck.</summary>
    public static QuestionSpec Netlist { get; } = new("netlist", "the same circuit for any SPICE program") { Options = [Steady] };

    /// <summary>The paper that goes with a rig.</summary>
    public static QuestionSpec Sheet { get; } = new("sheet", "the sheet that goes with the rig, for the lid of its case and for the bench")
    { Options = [SheetParts, Paper, LabelSizes, Contact, Reels, Ends, Cut] };

    /// <summary>Was it built as drawn?</summary>
    public static QuestionSpec Accept { get; } = new("accept", "was it built as drawn: what must a meter show, and what did it show?");

    /// <summary>All questions, in the order in which the API's description has them.</summary>
    public static IReadOnlyList<QuestionSpec> Questions => [Read, Ask, Check, Plan, Buy, Settle, StartUp, Netlist, Sheet, Accept];
}
