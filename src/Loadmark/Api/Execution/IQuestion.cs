using Loadmark.Api.Requests;

namespace Loadmark.Api.Execution;

/// <summary>A question about a rig or a label that is answered over HTTP, as the command of the same name answers it.</summary>
internal interface IQuestion
{
    /// <summary>What the question takes and answers.</summary>
    ApiOperation Operation { get; }

    /// <summary>Understands a request, without computing anything that takes time.</summary>
    /// <param name="request">The request.</param>
    PreparedQuestion Prepare(ApiRequest request);
}
