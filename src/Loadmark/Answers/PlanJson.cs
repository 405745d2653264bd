using System.Text.Json;
using Loadmark.Core.Ratings;
using Loadmark.Core.Rigs;
using Loadmark.Planning;
using Loadmark.Planning.Explaining;
using Loadmark.Planning.Objective;
using Loadmark.Shapes;

namespace Loadmark.Answers;

/// <summary>Writes the answer to a plan as JSON.</summary>
internal static class PlanJson
{
    /// <summary>Writes the answer and a line end.</summary>
    public static void Write(Stream output, PlanResult plan, PlanExplanation explanation) =>
        JsonFigures.WriteLine(output, json => Write(json, plan, explanation));

    /// <summary>Writes a plan as an object.</summary>
    public static void Write(Utf8JsonWriter json, PlanResult plan, PlanExplanation explanation)
    {
        json.WriteStartObject();
        json.WriteString("status", plan.Status.ToString().ToLowerInvariant());
        json.WriteList("feeds", WiredRig.Of(plan.Rig).Feeds, Write);
        json.WriteTexts("unfed", plan.Unfed);
        json.WriteList("reasons", explanation.Reasons, Write);
        json.WriteTexts("changes", [.. explanation.Changes.Items.Select(static change => change.Text)]);
        json.WriteList("objective", plan.Objective, Write);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, WiredFeed feed)
    {
        json.WriteStartObject();
        json.WriteTexts("from", [.. feed.Outlets.Select(static outlet => outlet.Name)]);
        json.WriteString("joined", feed.Joined == Joint.None ? null : feed.Joined.ToString().ToLowerInvariant());
        json.WriteFigure("volts", feed.Volts?.Value);
        json.WriteString("lead", feed.Feed.Lead ?? "straight");
        json.WriteTexts("to", feed.Feed.To);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, Reason reason)
    {
        json.WriteStartObject();
        json.WriteTexts("loads", reason.Loads);
        json.WriteString("because", reason.Because);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ObjectiveLevel level)
    {
        json.WriteStartObject();
        json.WriteString("name", level.Name);
        json.WriteFigure("value", level.Value);
        json.WriteFigure("bound", level.Bound);
        json.WriteEndObject();
    }
}
