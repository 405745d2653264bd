using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Workshop.Library;

namespace Loadmark.Api.Library;

/// <summary>A figure of a piece of gear changed; what does that mean to the rigs that have it?</summary>
/// <param name="cache">The gear.</param>
/// <param name="rigs">Finds the rigs.</param>
/// <param name="questions">Answers what takes time.</param>
internal sealed class AffectedEndpoint(LibraryCache cache, AffectedRigs rigs, QuestionEndpoint questions)
{
    /// <summary>Answers which rigs a piece of gear means something to.</summary>
    public Task<IResult> AnswerAsync(HttpContext context, string kind, string tag) =>
        questions.AnswerAsync(context, GearOperations.Affected, async _ =>
    {
        if (GearAddress.Find(await cache.NowAsync(context.RequestAborted), kind, tag, out var refusal) is not { } gear)
            return refusal;
        return new Computation((progress, cancellation) =>
        {
            // On one core, so that the page keeps the other.
            var options = new AffectedOptions { Threads = 1, Progress = progress };
            var found = AffectedInOrder.FindAsync(rigs, gear, options, cancellation).GetAwaiter().GetResult();
            return AnswerBytes.Of(output => RigsJson.Write(output, gear, found));
        });
    });
}
