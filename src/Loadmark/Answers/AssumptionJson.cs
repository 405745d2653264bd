using Loadmark.Shapes;
using Loadmark.Simulation.Figures;

namespace Loadmark.Answers;

/// <summary>A figure that the rig does not say as JSON.</summary>
internal static class AssumptionJson
{
    /// <summary>The shape of an assumption.</summary>
    public static JsonShape<Assumption> Assumption { get; } = new JsonShape<Assumption>("Assumption", "A figure that the rig does not say.")
        .Text("figure", static assumption => assumption.Figure, "Which figure.")
        .Text("value", static assumption => assumption.Value, "What is taken for it, with its unit.")
        .Texts("subjects", static assumption => assumption.Subjects, "For what.")
        .Text("source", static assumption => assumption.Source, "What it rests on.");
}
