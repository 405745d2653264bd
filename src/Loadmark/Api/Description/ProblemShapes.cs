using Loadmark.Answers;
using Loadmark.Web.Problems;
using static Loadmark.Api.Description.SchemaShape;

namespace Loadmark.Api.Description;

/// <summary>The shape of problems.</summary>
internal static class ProblemShapes
{
    /// <summary>The name that the shape is referred to by.</summary>
    public const string Name = "Problem";

    /// <summary>Adds the shape of a problem to the book.</summary>
    public static void AddTo(ShapeBook book) => book.Add(Name, Object(
        "A refusal, as RFC 9457 (Problem Details for HTTP APIs) tells it.",
        [
            (ProblemMember.Kind, Text("Its kind; the address explains it.")),
            (ProblemMember.Title, Text("Its kind in words.")),
            (ProblemMember.Status, Count("The HTTP status.")),
            (ProblemMember.Detail, Text("What is wrong this time.")),
            (ProblemMember.Id, Text("The request's id: whoever looks into it finds the request in the log by it.")),
            .. book.MembersOf(ProblemExtras.Shape),
        ]));
}
