using Loadmark.Shapes;
using Loadmark.Workshop.Asking;

namespace Loadmark.Answers;

/// <summary>The answer to "may I plug this in?" as JSON.</summary>
internal static class AskJson
{
    private static JsonShape<PlugInPoint> Point { get; } = new JsonShape<PlugInPoint>("PlugInPoint", "One thing that has to fit.")
        .Word("what", static point => point.Aspect, WordOf, "What has to fit.")
        .Word("state", static point => point.State, WordOf, "Whether it does; unsure too where little is to spare.")
        .Text("working", static point => point.Working, "Why, with the arithmetic.");

    private static JsonShape<FollowUp> Next { get; } = new JsonShape<FollowUp>("FollowUp", "What is often asked next.")
        .Text("question", static next => next.Question, "The question.")
        .Text("answer", static next => next.Answer, "The answer.");

    /// <summary>The answer.</summary>
    public static JsonShape<PlugInAnswer> Answer { get; } = new JsonShape<PlugInAnswer>("PlugInAnswer", "May it be plugged in?")
        .Word("answer", static answer => answer.Verdict, WordOf, "The answer in a word.")
        .Text("sentence", static answer => answer.Sentence, "The answer in one sentence.")
        .Texts("because", static answer => answer.Because, "Why.")
        .Texts("ifs", static answer => answer.Ifs, "What has to hold, or has to be found out first.")
        .List("checks", static answer => answer.Points, Point, "What has to fit, each with its reason; empty without a supply.")
        .Figure(
            "leftAmps", static answer => answer.Left?.Value, "What stays unused of the outlets in use, A; null where it is not known.",
            Presence.OrNull)
        .Texts("fits", static answer => answer.Fits, "What else fits; without a supply, what would do.")
        .List("next", static answer => answer.Next, Next, "What is often asked next.")
        .Text("rig", static answer => answer.RigText, "The rig file that the question comes to, to be kept.");

    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, PlugInAnswer answer) => JsonFormat.WriteLine(output, Answer, answer);

    /// <summary>The word for what has to fit.</summary>
    public static string WordOf(PlugInAspect aspect) => aspect switch
    {
        PlugInAspect.Volts => "volts",
        PlugInAspect.Form => "form",
        PlugInAspect.Polarity => "polarity",
        PlugInAspect.Amps => "amps",
        PlugInAspect.Start => "start",
        PlugInAspect.Plug => "plug",
        PlugInAspect.Sharing => "sharing",
        _ => throw new ArgumentOutOfRangeException(nameof(aspect), aspect, "It has no word."),
    };

    /// <summary>The word for the answer to "may I plug this in?".</summary>
    private static string WordOf(PlugInVerdict verdict) => verdict switch
    {
        PlugInVerdict.Yes => "yes",
        PlugInVerdict.YesIf => "yes-if",
        PlugInVerdict.FindOut => "find-out",
        PlugInVerdict.No => "no",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "It has no word."),
    };

    /// <summary>The word for how one of those stands.</summary>
    private static string WordOf(PointState state) => state switch
    {
        PointState.Good => "good",
        PointState.Unsure => "unsure",
        PointState.Bad => "bad",
        _ => throw new ArgumentOutOfRangeException(nameof(state), state, "It has no word."),
    };
}
