using Loadmark.Answers;
using Loadmark.Api.Execution;
using Loadmark.Api.Requests;
using Loadmark.Questions;
using Loadmark.Web.Problems;
using Loadmark.Workshop.Asking;

namespace Loadmark.Api.Questions;

/// <summary>May this be plugged in?</summary>
internal sealed class AskQuestion : IQuestion
{
    private static readonly BodyMember Loads = new("loads", "What each pedal says, a label with a name before it or without.")
    {
        IsList = true,
    };

    private static readonly BodyMember Supplies = new(
        "supplies", "What each adaptor or supply says; left out, the answer is what would do.")
    {
        IsList = true,
        IsOptional = true,
    };

    private static readonly BodyShape Asked = new("WhatToPlugIn", "What is to be plugged in, and into what.", [Loads, Supplies]);

    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Ask.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Ask.Sentence,
        About = "No rig is needed: what is printed on the things is enough.",
        Options = [.. QuestionSpecs.Ask.EveryOption],
        Bodies = [ApiContent.Of(Asked, "ask.request.json")],
        Answers = [ApiContent.Of(AskJson.Answer, "ask.json")],
        Streams = true,
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (BodyObject.Read(request.Body, Asked, out var refusal) is not { } body
            || body.Texts(Loads, out refusal) is not { } loads
            || body.Texts(Supplies, out refusal) is not { } supplies)
            return refusal;
        var question = new PlugInQuestion
        {
            Loads = loads,
            Supplies = supplies,
            IsChain = request.Options.Has(QuestionSpecs.Chain),
            Mains = request.Options.Text(QuestionSpecs.Mains),
        };
        if (AskedRig.Of(question, out var complaint) is not { } asked)
            return new Problem(ProblemKind.BadRequest, complaint);
        return new Computation((_, cancellation) =>
        {
            var answer = PlugInAdvisor.Answer(asked, cancellation);
            return AnswerBytes.Of(output => AskJson.Write(output, answer));
        });
    }
}
