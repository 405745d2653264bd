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
    /// <inheritdoc/>
    public ApiOperation Operation { get; } = new()
    {
        Name = QuestionSpecs.Ask.Name,
        Group = "Questions",
        Summary = QuestionSpecs.Ask.Sentence,
        About = "No rig is needed: what is printed on the things is enough.",
        Options = [.. QuestionSpecs.Ask.EveryOption],
        Bodies = [new(ApiContent.Json, RequestBodies.WhatToPlugIn.Name, "ask.request.json")],
        Answers = [new(ApiContent.Json, "PlugInAnswer", "ask.json")],
        Streams = true,
    };

    /// <inheritdoc/>
    public PreparedQuestion Prepare(ApiRequest request)
    {
        if (BodyObject.Read(request.Body, RequestBodies.WhatToPlugIn, out var refusal) is not { } body
            || body.Texts(RequestBodies.Loads, out refusal) is not { } loads
            || body.Texts(RequestBodies.Supplies, out refusal) is not { } supplies)
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
