using Loadmark.Questions;
using Loadmark.Web.Problems;

namespace Loadmark.Api.Requests;

/// <summary>What one address takes and answers. The document is made of it, and requests are held to it.</summary>
internal sealed record ApiOperation
{
    /// <summary>The operation's name, which a generated client calls it by.</summary>
    public required string Name { get; init; }

    /// <summary>The group that the operation belongs to.</summary>
    public required string Group { get; init; }

    /// <summary>The question that the operation answers, in a sentence.</summary>
    public required string Summary { get; init; }

    /// <summary>What else there is to know.</summary>
    public string About { get; init; } = "";

    /// <summary>The options that the operation takes in the address.</summary>
    public IReadOnlyList<OptionSpec> Options { get; init; } = [];

    /// <summary>The bodies that the operation takes; empty for none.</summary>
    public IReadOnlyList<ApiContent> Bodies { get; init; } = [];

    /// <summary>The status of a good answer.</summary>
    public int Status { get; init; } = StatusCodes.Status200OK;

    /// <summary>The contents that a good answer may have; empty for none.</summary>
    public required IReadOnlyList<ApiContent> Answers { get; init; }

    /// <summary>Whether the answer comes as events with progress where the caller asks for those.</summary>
    public bool Streams { get; init; }

    /// <summary>
    /// The parts of the address that name one thing, a rig or a piece of gear; empty where it is about none in particular.
    /// </summary>
    public IReadOnlyList<PathParameter> Names { get; init; } = [];

    /// <summary>Whether the request has to say which revision it starts from.</summary>
    public bool NeedsRevision { get; init; }

    /// <summary>Whether a good answer tells the revision in <c>ETag</c>.</summary>
    public bool TellsRevision { get; init; }

    /// <summary>What may be refused, beyond what anything may be.</summary>
    public IReadOnlyList<ProblemKind> Refusals { get; init; } = [];

    /// <summary>The operation of a question about one rig.</summary>
    /// <param name="question">The question.</param>
    /// <param name="answer">The content of a good answer.</param>
    public static ApiOperation OnRig(QuestionSpec question, ApiContent answer) => new()
    {
        Name = question.Name,
        Group = "Questions",
        Summary = question.Sentence,
        Options = [.. question.EveryOption, ApiOptions.File],
        Bodies = ApiContent.Rig,
        Answers = [answer],
        Streams = true,
        Refusals = [ProblemKind.Unreadable, ProblemKind.Store],
    };
}
