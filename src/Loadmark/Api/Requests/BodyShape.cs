using Loadmark.Shapes;

namespace Loadmark.Api.Requests;

/// <summary>A body that is an object of JSON with texts in it.</summary>
/// <param name="Name">The name of the shape in the description.</param>
/// <param name="About">What the body is, in a sentence for people.</param>
/// <param name="Members">The members, each of which may be there, and no other.</param>
internal sealed record BodyShape(string Name, string About, IReadOnlyList<BodyMember> Members) : IShape
{
    /// <inheritdoc/>
    IReadOnlyList<MemberDescription> IShape.Members => [.. Members.Select(static member => member.Description)];
}
