using Loadmark.Shapes;

namespace Loadmark.Api.Requests;

/// <summary>A member of a body, told once for whoever reads it and for the description.</summary>
/// <param name="Name">The key.</param>
/// <param name="Text">What the value is, in a sentence for people.</param>
internal sealed record BodyMember(string Name, string Text)
{
    /// <summary>Whether the value is a list of texts; else it is one text.</summary>
    public bool IsList { get; init; }

    /// <summary>Whether the member may be left out, or be null.</summary>
    public bool IsOptional { get; init; }

    /// <summary>What the API's description tells of the member.</summary>
    public MemberDescription Description => new(
        Name,
        new ValueDescription(IsList ? JsonKind.List : JsonKind.Text, Text)
        {
            Items = IsList ? JsonText.Item.Description : null,
            OrNull = IsOptional,
        },
        IsRequired: !IsOptional);
}
